using System.Globalization;
using HingeSelector.Comparing;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Says what differs between two answers for one athlete.</summary>
public static class DifferenceText
{
    private const int MostPlaces = 3;
    private const int MostNamed = 2;

    private static readonly (ChangeKinds Kind, string Word)[] _words =
    [
        (ChangeKinds.StopGone, "stop gone"), (ChangeKinds.HoldGone, "hold gone"), (ChangeKinds.StopNew, "stop new"), (ChangeKinds.HoldNew, "hold new"),
        (ChangeKinds.Outcome, "outcome"), (ChangeKinds.FirstChoice, "first choice"), (ChangeKinds.Out, "out"), (ChangeKinds.Order, "order"), (ChangeKinds.Points, "points"),
        (ChangeKinds.Band, "band"), (ChangeKinds.SetUp, "set-up"), (ChangeKinds.Cues, "cues"), (ChangeKinds.Cautions, "cautions"),
    ];

    /// <summary>The words for what differs, the gravest first.</summary>
    public static IReadOnlyList<string> Words(ChangeKinds kinds) => [.. _words.Where(w => (kinds & w.Kind) != 0).Select(w => w.Word)];

    /// <summary>The differences of one athlete, a phrase each.</summary>
    /// <param name="change">The change.</param>
    /// <param name="book">Names the criteria.</param>
    public static IEnumerable<string> Phrases(AthleteChange change, RuleBook book)
    {
        var (before, after) = (change.Before, change.After);
        if (before.Outcome != after.Outcome)
            yield return $"{OutcomeText.Word(before.Outcome)} -> {OutcomeText.Word(after.Outcome)}";
        foreach (var stop in change.StopsGone)
            yield return $"without the stop {stop.Rule}";
        foreach (var stop in Difference.StopsBeyond(after, before))
            yield return $"with the stop {stop.Rule}";
        foreach (var hold in change.HoldsGone)
            yield return $"no longer held by {hold}";
        foreach (var hold in Difference.HoldsBeyond(after, before))
            yield return $"held by {hold}";
        if ((change.Kinds & (ChangeKinds.FirstChoice | ChangeKinds.Order | ChangeKinds.Points)) != 0)
            yield return $"{Places(before)} -> {Places(after)}";
        foreach (var phrase in Out(before, after).Concat(Points(change, book)).Concat(SetUps(before, after)).Concat(Said(change)))
            yield return phrase;
    }

    /// <summary>Height and grip with what fits around them.</summary>
    public static string Band(Band band)
    {
        if (band.Height is not { } height)
            return "no start worked out";
        var fits = band is { From: { } from, To: { } to } ? $" ({Cm.Of(from)} to {Cm.Of(to)} fits)" : "";
        return $"{Cm.Of(height)}{fits}{(band.Grip is { } grip ? $", grip {Cm.Of(grip)}" : "")}";
    }

    private static string Places(Picture picture)
        => picture.Ranked.Count == 0 ? "nothing ranked" : string.Join(", ", picture.Ranked.Take(MostPlaces).Select(r => $"{r.Label} {r.Score}{(r.Tied ? " tied" : "")}"));

    private static IEnumerable<string> Out(Picture before, Picture after)
    {
        var mayPull = before.Ranked.Count + before.Out.Count > 0 && after.Ranked.Count + after.Out.Count > 0;
        if (mayPull && after.Out.Except(before.Out, StringComparer.Ordinal).ToList() is { Count: > 0 } gone)
            yield return $"out now: {string.Join(", ", gone)}";
        if (mayPull && before.Out.Except(after.Out, StringComparer.Ordinal).ToList() is { Count: > 0 } back)
            yield return $"no longer out: {string.Join(", ", back)}";
    }

    // Of the variant that leads after, else of the first whose points differ: the rest stands in the json format.
    private static IEnumerable<string> Points(AthleteChange change, RuleBook book)
    {
        var (before, after) = (change.Before, change.After);
        var pairs = Difference.Pairs(before, after).Where(p => p.Before.Score != p.After.Score || !p.Before.Points.SequenceEqual(p.After.Points)).ToList();
        if (pairs.Count == 0 || before.Weights.Count != book.Criteria.Count || after.Weights.Count != book.Criteria.Count)
            yield break;
        var (x, y) = pairs.MinBy(p => after.Ranked.ToList().FindIndex(r => r.Id == p.After.Id));
        var sameWeights = before.Weights.SequenceEqual(after.Weights);
        string Of(int points, int weight) => sameWeights ? AthleteText.WithSign(points) : string.Create(CultureInfo.InvariantCulture, $"{AthleteText.WithSign(points)} x {weight}");
        var differing = book.Criteria
            .Where(c => x.Points[c.Index] * before.Weights[c.Index] != y.Points[c.Index] * after.Weights[c.Index] || (sameWeights && x.Points[c.Index] != y.Points[c.Index]))
            .Select(c => $"{c.Label.ToLowerInvariant()} {Of(x.Points[c.Index], before.Weights[c.Index])} -> {Of(y.Points[c.Index], after.Weights[c.Index])}");
        yield return $"{y.Label}: {string.Join(", ", differing)}{More(pairs.Count - 1, "variant")}";
    }

    private static IEnumerable<string> SetUps(Picture before, Picture after)
    {
        var pairs = Difference.Pairs(before, after);
        var bands = pairs.Where(p => p.Before.Band != p.After.Band).ToList();
        if (bands.Count > 0)
            yield return $"{bands[0].After.Label}: {Band(bands[0].Before.Band)} -> {Band(bands[0].After.Band)}{More(bands.Count - 1, "variant")}";
        var wishes = pairs.SelectMany(p => Difference.SetUpKeys(p.Before, p.After).Select(k => $"{p.After.Label}: {k} {p.Before.Wishes.Word(k)} -> {p.After.Wishes.Word(k)}")).ToList();
        if (wishes.Count > 0)
            yield return $"{wishes[0]}{More(wishes.Count - 1, "set-up change")}";
    }

    private static IEnumerable<string> Said(AthleteChange change)
    {
        var pairs = Difference.Pairs(change.Before, change.After);
        if ((change.Kinds & ChangeKinds.Cues) != 0)
            yield return NewAndGone("says", pairs.SelectMany(p => p.Before.Cues), pairs.SelectMany(p => p.After.Cues));
        if ((change.Kinds & ChangeKinds.Cautions) != 0)
            yield return NewAndGone("warns", change.Before.Cautions.Concat(pairs.SelectMany(p => p.Before.Cautions)), change.After.Cautions.Concat(pairs.SelectMany(p => p.After.Cautions)));
    }

    private static string NewAndGone(string verb, IEnumerable<string> before, IEnumerable<string> after)
    {
        var added = after.Except(before, StringComparer.Ordinal).ToList();
        var gone = before.Except(after, StringComparer.Ordinal).ToList();
        List<string> parts = [];
        if (added.Count > 0)
            parts.Add($"{verb} also {Quoted(added)}");
        if (gone.Count > 0)
            parts.Add($"no longer {verb} {Quoted(gone)}");
        return parts.Count > 0 ? string.Join("; ", parts) : $"{verb} the same to other variants";
    }

    private static string Quoted(List<string> texts) => string.Join(" ", texts.Take(MostNamed).Select(t => $"\"{t}\"")) + More(texts.Count - MostNamed, "line");

    private static string More(int more, string what) => more <= 0 ? "" : $" (and {more} more {what}{(more == 1 ? "" : "s")})";
}
