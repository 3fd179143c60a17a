using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Editing;

/// <summary>The answer for one athlete, kept up to date while somebody edits rules. Faulty rules change nothing.</summary>
/// <param name="engine">The engine that decides, for given rules.</param>
/// <param name="ask">The question about the athlete, read anew because the words may have changed.</param>
public sealed class LiveRanking(Func<RuleBook, IRuleEngine> engine, Func<RuleBook, Question> ask)
{
    /// <summary>The last answer that stands; null before the first.</summary>
    public LiveAnswer? Last { get; private set; }

    /// <summary>Reads the rules and answers anew.</summary>
    /// <param name="files">The rules as they are now.</param>
    /// <param name="faults">Every fault of the rules; none when they could be used.</param>
    /// <returns>The new answer; null when the rules are faulty, so that the last one stands.</returns>
    public LiveAnswer? Update(RuleFiles files, out IReadOnlyList<Diagnostic> faults)
    {
        var bag = new DiagnosticBag();
        var book = RuleBookReader.Read(files, bag);
        faults = [.. bag.Sorted.Where(d => d.Severity == Severity.Error)];
        if (book is null || faults.Count > 0)
            return null;
        var question = ask(book);
        var under = book.Under(question.Philosophy);
        var recommendation = new Selector(under, engine(under)).Choose(question);
        return Last = new LiveAnswer(under, recommendation, Last);
    }
}
