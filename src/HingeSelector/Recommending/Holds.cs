using HingeSelector.Words;

namespace HingeSelector.Recommending;

/// <summary>Questions that must be answered before anyone pulls. A blank is not a yes and not a no: it holds the athlete.</summary>
internal static class Holds
{
    private const double HoursPerYear = 24 * 365.25;
    private const int Adult = 18;

    /// <summary>The words that are not answered.</summary>
    public static IReadOnlyList<(string Word, string Label)> Unanswered(Vocabulary vocabulary, FactValue[] facts)
    {
        var age = facts[vocabulary["age"].Slot];
        var adult = age.IsKnown && age.Low >= Adult * HoursPerYear;
        // A stop question applies to everyone: "not applicable" is no answer to it.
        var words = vocabulary.InGroup("stop-questions").Concat(vocabulary.InGroup("must-answer"));
        if (!adult)
            words = words.Concat(vocabulary.InGroup("must-answer-under-18"));
        return [.. words.Where(w => !facts[w.Slot].IsKnown).Select(w => (w.Id, w.Label))];
    }
}
