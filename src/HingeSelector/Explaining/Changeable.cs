using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Which facts an explanation may propose to be otherwise. Nobody is talked out of a stop, of pain or of their history.</summary>
public static class Changeable
{
    private const string MustBeAnswered = "it must be answered as it is before anyone pulls";

    /// <summary>Why a fact is left out; null when it may be proposed.</summary>
    /// <param name="vocabulary">Says it by word and by group.</param>
    /// <param name="word">The fact.</param>
    public static string? WhyNot(Vocabulary vocabulary, Word word)
    {
        if (word.NotSuggested is { } own)
            return own;
        if (vocabulary.Groups.FirstOrDefault(g => g.NotSuggested is not null && word.Groups.Contains(g.Id)) is { } group)
            return group.NotSuggested;
        return word.Groups.Any(Holds) ? MustBeAnswered : null;
    }

    // Groups such as must-answer-under-18 name an age.
    private static bool Holds(string group) => group == "stop-questions" || group.StartsWith("must-answer", StringComparison.Ordinal);

    /// <summary>The facts that are left out, by why.</summary>
    public static IReadOnlyList<LeftOut> LeftOut(Vocabulary vocabulary)
        => [.. vocabulary.Words.Where(w => w.IsMeasured && w.Kind is not (WordKind.Text or WordKind.Date))
            .Select(w => (Word: w, Why: WhyNot(vocabulary, w))).Where(p => p.Why is not null)
            .GroupBy(p => p.Why!, StringComparer.Ordinal).Select(g => new LeftOut(g.Key, [.. g.Select(p => p.Word)]))];
}
