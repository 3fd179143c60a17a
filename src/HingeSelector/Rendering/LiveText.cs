using HingeSelector.Editing;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Tells the ranking while rules are edited: the first three, and what changed.</summary>
public static class LiveText
{
    private const int Most = 3;
    private const int MostChanges = 8;

    /// <summary>The lines of an answer.</summary>
    public static IEnumerable<Line> Of(LiveAnswer live)
    {
        yield return AthleteText.Title(live.Answer);
        foreach (var stop in live.Answer.Stops)
            yield return Line.Text("Stop", stop.Say);
        foreach (var ranked in live.Answer.Ranked.Take(Most))
            yield return Line.Text(AthleteText.Place(ranked), $"{ranked.Candidate.Variant.Label}, {ranked.Score} points");
        if (live.Before is null)
            yield break;
        foreach (var change in Changes(live))
            yield return Line.Text("Changed", change);
    }

    private static IEnumerable<string> Changes(LiveAnswer live)
    {
        var rules = live.Rules.Select(r => $"rule {r.Id}: {r.How}").ToList();
        foreach (var text in Cut(rules, "rules"))
            yield return text;
        if (OutcomeText.Headline(live.Before!) is var was && OutcomeText.Headline(live.Answer) != was)
            yield return $"the outcome was: {was}";
        foreach (var gone in Stops(live.Before!).Except(Stops(live.Answer)))
            yield return $"a stop is gone: {gone}";
        foreach (var come in Stops(live.Answer).Except(Stops(live.Before!)))
            yield return $"a stop is new: {come}";
        var moves = live.Moved.Select(m => $"{m.Label}: {Of(m.From)} -> {Of(m.To)}").ToList();
        foreach (var text in Cut(moves, "variants"))
            yield return text;
        if (rules.Count + moves.Count == 0)
            yield return "no rule says anything else, and no variant moved";
        else if (moves.Count == 0)
            yield return "no variant moved";
    }

    private static IEnumerable<string> Stops(Recommendation answer) => answer.Stops.Select(s => $"{s.Say} (rule {s.Trace.Rule.Id})");

    private static List<string> Cut(List<string> texts, string what)
        => texts.Count <= MostChanges ? texts : [.. texts.Take(MostChanges), $"and {texts.Count - MostChanges} more {what}"];

    private static string Of(LiveAnswer.Stand? stand) => stand is null ? "not ranked" : $"place {stand.Place} with {stand.Score} points";
}
