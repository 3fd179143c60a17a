using System.Globalization;

namespace HingeSelector.Examples.Squads;

/// <summary>Holds two decisions of the same squad against each other.</summary>
public static class SquadComparison
{
    /// <summary>Every difference by athlete in the order of the roster, the gravest first.</summary>
    public static IReadOnlyList<SquadChange> Of(SquadRecord before, SquadRecord after)
    {
        var now = after.Athletes.ToDictionary(a => a.Id, StringComparer.Ordinal);
        var changes = new List<SquadChange>();
        foreach (var athlete in before.Athletes)
        {
            if (now.Remove(athlete.Id, out var other))
                changes.AddRange(Of(athlete, other).OrderBy(c => c.Kind));
            else
                changes.Add(new SquadChange(athlete.Id, ChangeKind.Athlete, null, "on the roster", ""));
        }
        changes.AddRange(now.Values.Select(a => new SquadChange(a.Id, ChangeKind.Athlete, null, "", "on the roster")));
        return changes;
    }

    private static IEnumerable<SquadChange> Of(AthleteDecision before, AthleteDecision after)
    {
        SquadChange One(ChangeKind kind, string was, string now, string? variant = null) => new(before.Id, kind, variant, was, now);

        foreach (var gone in before.Stops.Except(after.Stops))
            yield return One(ChangeKind.StopGone, gone, "");
        foreach (var fresh in after.Stops.Except(before.Stops))
            yield return One(ChangeKind.StopNew, "", fresh);
        if (before.Outcome != after.Outcome)
            yield return One(ChangeKind.Outcome, before.Outcome, after.Outcome);
        var (first, firstNow) = (First(before), First(after));
        if (first != firstNow)
            yield return One(ChangeKind.FirstChoice, first, firstNow);
        var (order, orderNow) = (Order(before), Order(after));
        if (order != orderNow)
            yield return One(ChangeKind.Order, order, orderNow);
        foreach (var (was, now) in Apart(before.Excluded, after.Excluded))
            yield return One(ChangeKind.Excluded, was, now);
        foreach (var (was, now) in Apart(before.Cautions, after.Cautions).Concat(Apart(before.Unanswered, after.Unanswered)))
            yield return One(ChangeKind.Cautions, was, now);
        foreach (var candidate in before.Ranked)
        {
            if (after.Ranked.FirstOrDefault(c => c.Variant == candidate.Variant) is not { } other)
                continue;
            foreach (var (kind, was, now) in Of(candidate, other))
                yield return One(kind, was, now, candidate.Variant);
        }
    }

    private static IEnumerable<(ChangeKind, string, string)> Of(CandidateDecision before, CandidateDecision after)
    {
        if (before.FirstTry != after.FirstTry)
            yield return (ChangeKind.Band, $"height {before.FirstTry}", $"height {after.FirstTry}");
        if (before.Grip != after.Grip)
            yield return (ChangeKind.Band, $"grip {before.Grip}", $"grip {after.Grip}");
        foreach (var (was, now) in Apart(before.SetUp, after.SetUp))
            yield return (ChangeKind.SetUp, was, now);
        foreach (var criterion in before.Points.Keys.Union(after.Points.Keys))
        {
            var (was, now) = (before.Points.GetValueOrDefault(criterion), after.Points.GetValueOrDefault(criterion));
            if (was != now)
                yield return (ChangeKind.Points, Signed(was, criterion), Signed(now, criterion));
        }
        foreach (var (was, now) in Apart(before.Cues, after.Cues))
            yield return (ChangeKind.Cues, was, now);
        foreach (var (was, now) in Apart(before.Cautions, after.Cautions))
            yield return (ChangeKind.Cautions, was, now);
    }

    private static IEnumerable<(string Before, string After)> Apart(IReadOnlyList<string> before, IReadOnlyList<string> after)
        => before.Except(after).Select(b => (b, "")).Concat(after.Except(before).Select(a => ("", a)));

    private static string Signed(int points, string criterion) => string.Create(CultureInfo.InvariantCulture, $"{points:+0;-0;0} for {criterion}");

    // Those who share the first place are the first choice together.
    private static string First(AthleteDecision decision) => string.Join(" or ", decision.Ranked.Where(c => c.Place == 1).Select(c => c.Variant));

    private static string Order(AthleteDecision decision) => string.Join(", ", decision.Ranked.Select(c => c.Variant));
}
