using System.Globalization;
using HingeSelector.Words;

namespace HingeSelector.Recommending;

/// <summary>Questions that must be answered before anyone pulls. A blank is not a yes and not a no: it holds the athlete.</summary>
internal static class Holds
{
    private const double HoursPerYear = 24 * 365.25;
    private const string UnderAge = "must-answer-under-";

    // A word with sides is answered when both are.
    private static bool IsAnswered(Word word, FactValue[] facts) => word.Sided
        ? IsSettled(facts[word.Slot + Sides.Left]) && IsSettled(facts[word.Slot + Sides.Right])
        : facts[word.Slot].IsExact;

    // A side that an athlete does not have cannot hurt; "at least 3" is no answer yet.
    private static bool IsSettled(FactValue side) => side.IsExact || side.State == FactState.NotApplicable;

    // Who may be younger than the age in the name of the group is asked, so an age that is not known asks too.
    private static bool MayBeUnder(string group, FactValue age)
        => group.StartsWith(UnderAge, StringComparison.Ordinal)
            && int.TryParse(group[UnderAge.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out var years)
            && !(age.IsKnown && age.Low >= years * HoursPerYear);

    /// <summary>The words that are not answered.</summary>
    public static IReadOnlyList<UnansweredQuestion> Unanswered(Vocabulary vocabulary, FactValue[] facts)
    {
        // A stop question applies to everyone: "not applicable" is no answer to it.
        var words = vocabulary.InGroup("stop-questions").Concat(vocabulary.InGroup("must-answer"));
        foreach (var group in vocabulary.GroupIds.Where(g => MayBeUnder(g, facts[vocabulary["age"].Slot])).Order(StringComparer.Ordinal))
            words = words.Concat(vocabulary.InGroup(group));
        var unanswered = words.Where(w => !IsAnswered(w, facts)).ToList();
        // Twenty-six blanks of one group that has a blanket answer are one question to the athlete.
        var groups = vocabulary.Groups.Where(g => g.Id != "stop-questions" && unanswered.Count(w => w.Groups.Contains(g.Id)) > 1).ToList();
        return [.. unanswered.Where(w => !groups.Any(g => w.Groups.Contains(g.Id))).Select(w => new UnansweredQuestion(w.Id, w.Label)), .. groups.Select(g => new UnansweredQuestion(g.Id, g.Label))];
    }
}
