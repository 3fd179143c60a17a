namespace HingeSelector.Comparing;

/// <summary>A squad asked by two sides: who changes.</summary>
/// <param name="Asked">How many athletes both sides could read.</param>
/// <param name="Changes">Those whose answers differ, in the order of the roster.</param>
/// <param name="OnlyOneSide">Ids of athletes that only one side could read.</param>
public sealed record Comparison(int Asked, IReadOnlyList<AthleteChange> Changes, IReadOnlyList<string> OnlyOneSide)
{
    /// <summary>Asks both sides about everyone, on all processors; the order of the result is that of the roster.</summary>
    /// <param name="from">The first side.</param>
    /// <param name="to">The second side.</param>
    /// <param name="sameGround">Whether words, variants, model and assumptions are the same, so that postures and searches are worked out once.</param>
    public static Comparison Of(Side from, Side to, bool sameGround)
    {
        var both = to.Squad.Athletes.Where(a => from.Find(a.Id) is not null).ToList();
        var changes = new AthleteChange?[both.Count];
        Parallel.For(0, both.Count, i => changes[i] = Change(from, to, from.Find(both[i].Id)!, both[i], sameGround));
        var known = both.Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        return new Comparison(both.Count, [.. changes.OfType<AthleteChange>()], [.. from.Squad.Athletes.Concat(to.Squad.Athletes).Select(a => a.Id).Where(id => !known.Contains(id)).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>What differs for one athlete; null when nothing does.</summary>
    private static AthleteChange? Change(Side from, Side to, Screening.AthleteRecord before, Screening.AthleteRecord after, bool sameGround)
    {
        var (x, y) = sameGround ? Side.OfBoth(from, to, before) : (from.Of(before), to.Of(after));
        var kinds = Difference.Kinds(x, y, from.Criteria, to.Criteria);
        return kinds == ChangeKinds.None ? null : new AthleteChange(after.Id, after.Name, x, y, kinds);
    }

    /// <summary>Asks the engine of record about an athlete that is shown as an example.</summary>
    /// <exception cref="InvalidOperationException">It answers otherwise than the loop evaluator: a fault of the program.</exception>
    internal static void Confirm(Side from, Side to, AthleteChange change)
    {
        foreach (var (side, picture) in new[] { (from, change.Before), (to, change.After) })
        {
            if (Difference.Kinds(picture, side.OfRecord(side.Find(change.Athlete)!), side.Criteria, side.Criteria) != ChangeKinds.None)
                throw new InvalidOperationException($"The two engines differ about {change.Athlete}.");
        }
    }
}
