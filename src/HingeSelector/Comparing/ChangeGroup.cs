namespace HingeSelector.Comparing;

/// <summary>Athletes whose answers differ in the same way for the same reason.</summary>
/// <param name="Kinds">What differs for at least one of them.</param>
/// <param name="FirstBefore">Label of the first choice before; null without one, or where the first choice does not differ.</param>
/// <param name="FirstAfter">Label of the first choice after; null without one, or where the first choice does not differ.</param>
/// <param name="Cause">The edits behind it; null where no edits are compared.</param>
/// <param name="Athletes">All of them, in the order of the roster.</param>
/// <param name="Examples">A few of them, confirmed by the engine of record.</param>
public sealed record ChangeGroup(ChangeKinds Kinds, string? FirstBefore, string? FirstAfter, Cause? Cause, IReadOnlyList<AthleteChange> Athletes, IReadOnlyList<AthleteChange> Examples)
{
    private const int MostExamples = 3;
    private const ChangeKinds Grave = ChangeKinds.StopGone | ChangeKinds.HoldGone;

    // Points, words of the set-up and cautions nearly always come with something graver; they tell no groups apart.
    private const ChangeKinds Fine = ChangeKinds.Points | ChangeKinds.SetUp | ChangeKinds.Cautions;

    /// <summary>Groups changes: those that lose a stop or a hold first, then the commonest.</summary>
    /// <param name="changes">The changes, each with its cause where there are edits.</param>
    public static IReadOnlyList<ChangeGroup> Of(IEnumerable<(AthleteChange Change, Cause? Cause)> changes)
        => [.. changes
            .GroupBy(c => (Kinds: c.Change.Kinds & ~Fine, Before: First(c.Change, c.Change.Before), After: First(c.Change, c.Change.After), Cause: c.Cause is null ? "" : $"{c.Cause.How} {string.Join(',', c.Cause.Edits)}"))
            .Select(g => new ChangeGroup(g.Aggregate(ChangeKinds.None, (all, c) => all | c.Change.Kinds), g.Key.Before, g.Key.After, g.First().Cause, [.. g.Select(c => c.Change)], [.. g.Select(c => c.Change).Take(MostExamples)]))
            .OrderByDescending(g => (g.Kinds & Grave) != 0)
            .ThenByDescending(g => g.Athletes.Count)
            .ThenBy(g => g.Athletes[0].Athlete, StringComparer.Ordinal)];

    private static string? First(AthleteChange change, Picture picture)
        => (change.Kinds & ChangeKinds.FirstChoice) != 0 && picture.Ranked.Count > 0 ? picture.Ranked[0].Label : null;
}
