using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rendering;

/// <summary>Says what a rule concludes.</summary>
public static class ConclusionText
{
    /// <summary>One conclusion as a short phrase.</summary>
    public static string Of(RuleBook book, Conclusion conclusion) => conclusion switch
    {
        FindingConclusion finding => $"finding: {book.Findings[finding.Finding].Label} ({book.Findings[finding.Finding].Id})",
        StopConclusion stop => $"stop ({OutcomeText.Word(stop.Level)}): {stop.Say} See: {stop.See}",
        ExclusionConclusion exclusion => $"exclude: {exclusion.Why}",
        RequestConclusion request => $"set-up: {Of(request.Request)}",
        PointsConclusion points => $"{AthleteText.WithSign(points.Amount)} for {book.Criteria[points.Criterion].Label.ToLowerInvariant()}",
        CueConclusion cue => $"say: {cue.Say}",
        WithholdConclusion withhold => $"withhold cues that ask: {string.Join(", ", withhold.Asks)}",
        CautionConclusion caution => $"caution: {caution.Text}",
        _ => throw new ArgumentOutOfRangeException(nameof(conclusion), conclusion, "This kind of conclusion has no words yet."),
    };

    /// <summary>A set-up change as a rule writes it.</summary>
    public static string Of(RequestedChange change)
        => change.Word is { } word ? $"{change.Key}: {word}" : $"{change.Key}: {(change.Key == "grip-width" ? "at most" : "at least")} {Cm.Of(change.Number!.Value)}";
}
