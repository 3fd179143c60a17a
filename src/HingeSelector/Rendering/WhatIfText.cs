using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Tells what would change in an answer, and nothing else.</summary>
public sealed class WhatIfText(RuleBook book)
{
    private const int MostSetUps = 3;
    private const int MostMoved = 8;

    private readonly SetUpText _setUp = new(book);

    /// <summary>The lines.</summary>
    public IEnumerable<Line> Of(WhatIf whatIf)
    {
        var difference = whatIf.Difference;
        foreach (var line in ExplanationHead.Of(difference.Before))
            yield return line;
        yield return Line.Heading("What if");
        foreach (var change in whatIf.Changes)
            yield return Line.Text("If", $"{change.Label}: {change.Then} (now {change.Now})");
        if (difference.IsEmpty)
            yield return Line.Text("Then", "nothing changes.");
        foreach (var line in Safety(difference))
            yield return line;
        // Help first: with an emergency nothing else is told.
        foreach (var line in difference.After.Outcome == Outcome.Emergency ? [] : Rest(difference))
            yield return line;
        yield return Line.Faint(StampText.Of(difference.After.Stamp));
    }

    private static IEnumerable<Line> Safety(AnswerDifference difference)
    {
        if (difference.Before.Outcome != difference.After.Outcome)
            yield return Line.Text("Then", $"{OutcomeText.Headline(difference.After)} (now {OutcomeText.Headline(difference.Before)})");
        foreach (var line in difference.NewStops.SelectMany(AthleteText.Stop))
            yield return line;
        foreach (var stop in difference.GoneStops)
            yield return Line.Text("Gone", $"the stop of rule {TraceText.Rule(stop.Trace.Rule)}");
        foreach (var (word, label) in difference.After.Unanswered.Except(difference.Before.Unanswered))
            yield return Line.Text("Ask", $"{label} ({word})");
    }

    private IEnumerable<Line> Rest(AnswerDifference difference)
    {
        if (!difference.SameFirst)
            yield return Line.Text("First", $"{difference.FirstAfter?.Label ?? "none"} (now {difference.FirstBefore?.Label ?? "none"})");
        foreach (var (variant, why) in difference.Lost)
            yield return Line.Text("Out", $"{variant.Label}: {why}");
        if (difference.Returned.Count > 0)
            yield return Line.Text("Back in", string.Join(", ", difference.Returned.Select(v => v.Label)));
        if (difference.Moved.Count > 0)
            yield return Line.Text("Order", string.Join(", ", difference.Moved.Take(MostMoved).Select(m => $"{m.Variant.Label} {m.Before} -> {m.After}")) + (difference.Moved.Count > MostMoved ? $" and {difference.Moved.Count - MostMoved} more" : ""));
        foreach (var (before, after) in difference.SetUps.Take(MostSetUps))
        {
            yield return Line.Text("Set-up", $"{after.Candidate.Variant.Label}: {SetUp(_setUp, after)}");
            yield return Line.Text("", $"now: {SetUp(_setUp, before)}");
        }
        if (difference.SetUps.Count > MostSetUps)
            yield return Line.Text("", $"and {difference.SetUps.Count - MostSetUps} more set-ups");
        foreach (var cue in difference.NewCues)
            yield return Line.Text("Say", cue);
        foreach (var cue in difference.GoneCues)
            yield return Line.Text("Not", cue);
    }

    /// <summary>A set-up with its bands and dose, in one phrase.</summary>
    internal static string SetUp(SetUpText text, RankedCandidate ranked)
    {
        var candidate = ranked.Candidate;
        string?[] parts = candidate.Choice is null
            ? [text.InOneLine(ranked)]
            : [SetUpText.Height(candidate), text.Grip(candidate), text.Rest(ranked), SetUpText.Dose(ranked), SetUpText.Fit(candidate)];
        return string.Join("; ", parts.OfType<string>());
    }
}
