using HingeSelector.Words;

namespace HingeSelector.Recommending;

/// <summary>Questions that must be answered before anyone pulls. A blank is not a yes and not a no: it holds the athlete.</summary>
internal static class Holds
{
    private const double HoursPerYear = 24 * 365.25;
    private const int Adult = 18;

    // A word with sides is answered when both are.
    private static bool IsAnswered(Word word, FactValue[] facts) => word.Sided
        ? IsSettled(facts[word.Slot + Sides.Left]) && IsSettled(facts[word.Slot + Sides.Right])
        : facts[word.Slot].IsExact;

    // A side that an athlete does not have cannot hurt; "at least 3" is no answer yet.
    private static bool IsSettled(FactValue side) => side.IsExact || side.State == FactState.NotApplicable;

    /// <summary>The words that are not answered.</summary>
    public static IReadOnlyList<UnansweredQuestion> Unanswered(Vocabulary vocabulary, FactValue[] facts)
    {
        var age = facts[vocabulary["age"].Slot];
        var adult = age.IsKnown && age.Low >= Adult * HoursPerYear;
        // A stop question applies to everyone: "not applicable" is no answer to it.
        var words = vocabulary.InGroup("stop-questions").Concat(vocabulary.InGroup("must-answer"));
        if (!adult)
            words = words.Concat(vocabulary.InGroup("must-answer-under-18"));
        var unanswered = words.Where(w => !IsAnswered(w, facts)).ToList();
        // Twenty-six blanks of one group that has a blanket answer are one question to the athlete.
        var groups = vocabulary.Groups.Where(g => g.Id != "stop-questions" && unanswered.Count(w => w.Groups.Contains(g.Id)) > 1).ToList();
        return [.. unanswered.Where(w => !groups.Any(g => w.Groups.Contains(g.Id))).Select(w => new UnansweredQuestion(w.Id, w.Label)), .. groups.Select(g => new UnansweredQuestion(g.Id, g.Label))];
    }
}
