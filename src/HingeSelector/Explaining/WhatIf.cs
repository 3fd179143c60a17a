using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>The answer if some facts were otherwise, held against the answer as it is.</summary>
/// <param name="Changes">What is taken to be otherwise.</param>
/// <param name="Difference">What it does to the answer.</param>
public sealed record WhatIf(IReadOnlyList<WhatIfChange> Changes, AnswerDifference Difference)
{
    /// <summary>Asks.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="engine">The engine of record.</param>
    /// <param name="question">The athlete, the room, the day.</param>
    /// <param name="texts">Changes as typed.</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The difference, or null when a change is faulty or would loosen what holds.</returns>
    public static WhatIf? Ask(RuleBook book, IRuleEngine engine, Question question, IReadOnlyList<string> texts, DiagnosticBag bag)
    {
        var changes = new WhatIfReader(book, question, bag).Read(texts);
        if (bag.HasErrors || Changed(question, changes, bag) is not { } changed)
            return null;
        var selector = new Selector(book, engine);
        var (before, after) = (selector.Choose(question), selector.Choose(changed));
        var result = new WhatIf(changes, AnswerDifference.Of(before, after));
        // An answer about safety may be tried to see what it would stop, never to see what it would free.
        foreach (var change in changes)
        {
            if (Changeable.WhyNot(book.Vocabulary, change.Word) is { } why && !IsWorse(change) && Loosens(book, before, after))
                bag.Add(Problems.WhatIfLoosens(change.Span, change.Word.Label, why));
        }
        return bag.HasErrors ? null : result;
    }

    private static Question? Changed(Question question, IReadOnlyList<WhatIfChange> changes, DiagnosticBag bag)
    {
        var room = question.Room;
        foreach (var change in changes.Where(c => !c.Word.IsMeasured))
            room = room is null ? null : ChangedRoom.With(room, change, bag);
        var answers = changes.Where(c => c.Word.IsMeasured).SelectMany(c => Sides(c).Select(side => (new AnswerKey(c.Word.Id, side), c.Value)));
        return bag.HasErrors ? null : question with { Room = room, Athlete = Edited.Answer(question.Athlete, answers, question.On) };
    }

    private static int[] Sides(WhatIfChange change) => change.Side switch
    {
        "both" => [0, 1],
        "right" => [1],
        _ => [0],
    };

    // More pain is never a loophole, even where a rule for little pain makes way for one for much.
    private static bool IsWorse(WhatIfChange change) => change.Word.Worse switch
    {
        WorseEnd.Higher => change.Before.All(v => v.IsExact && change.Value.IsExact && change.Value.Low >= v.Low),
        WorseEnd.Lower => change.Before.All(v => v.IsExact && change.Value.IsExact && change.Value.Low <= v.Low),
        _ => false,
    };

    private static bool Loosens(RuleBook book, Recommendation before, Recommendation after)
    {
        var holds = after.Fired.ToHashSet();
        bool Gone(Func<Conclusion, bool> what) => before.Fired.Any(f => !holds.Contains(f) && book.Rules[f.Rule].Conclusions.Any(what));
        var asked = after.Unanswered.Select(u => u.Word).ToHashSet(StringComparer.Ordinal);
        return after.Outcome < before.Outcome
            || (after.Outcome != Outcome.Emergency && before.Unanswered.Any(u => !asked.Contains(u.Word)))
            || Gone(c => c is StopConclusion or ExclusionConclusion)
            || (after.Outcome == before.Outcome && Gone(c => c is RequestConclusion or CautionConclusion));
    }
}
