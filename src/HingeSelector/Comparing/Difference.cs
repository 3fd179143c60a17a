using HingeSelector.Recommending;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Comparing;

/// <summary>Tells what differs between two pictures.</summary>
public static class Difference
{
    private static readonly string[] _setUpKeys = [.. RequestedChange.Words.Where(w => w.Value.Count > 1).Select(w => w.Key)];

    /// <summary>What differs.</summary>
    /// <param name="before">The first answer.</param>
    /// <param name="after">The second answer.</param>
    /// <param name="criteriaBefore">Ids of the criteria of the first rules.</param>
    /// <param name="criteriaAfter">Ids of the criteria of the second rules.</param>
    public static ChangeKinds Kinds(Picture before, Picture after, IReadOnlyList<string> criteriaBefore, IReadOnlyList<string> criteriaAfter)
    {
        var kinds = ChangeKinds.None;
        void Note(ChangeKinds kind, bool differs) => kinds |= differs ? kind : ChangeKinds.None;
        Note(ChangeKinds.StopGone, StopsBeyond(before, after).Any());
        Note(ChangeKinds.StopNew, StopsBeyond(after, before).Any());
        Note(ChangeKinds.HoldGone, HoldsBeyond(before, after).Count > 0);
        Note(ChangeKinds.HoldNew, HoldsBeyond(after, before).Count > 0);
        Note(ChangeKinds.Outcome, before.Outcome != after.Outcome);
        Note(ChangeKinds.FirstChoice, First(before) != First(after) || TiedFirsts(before) != TiedFirsts(after));
        Note(ChangeKinds.Out, !before.Out.Order(StringComparer.Ordinal).SequenceEqual(after.Out.Order(StringComparer.Ordinal)));
        Note(ChangeKinds.Cautions, !Same(before.Cautions, after.Cautions));
        var pairs = Pairs(before, after);
        Note(ChangeKinds.Order, !pairs.Select(p => p.Before.Id).SequenceEqual(after.Ranked.Select(r => r.Id).Where(id => pairs.Exists(p => p.Before.Id == id))));
        foreach (var (x, y) in pairs)
        {
            Note(ChangeKinds.Points, x.Score != y.Score || !SamePoints(x, y, criteriaBefore, criteriaAfter));
            Note(ChangeKinds.Band, x.Band != y.Band);
            Note(ChangeKinds.SetUp, SetUpKeys(x, y).Any());
            Note(ChangeKinds.Cues, !Same(x.Cues, y.Cues));
            Note(ChangeKinds.Cautions, !Same(x.Cautions, y.Cautions));
        }
        return kinds;
    }

    /// <summary>Stops of one answer that another lacks or has only weaker.</summary>
    public static IEnumerable<PicturedStop> StopsBeyond(Picture one, Picture other)
        => one.Stops.Where(s => !other.Stops.Any(o => o.Rule == s.Rule && !s.IsStricterThan(o)));

    /// <summary>Holds of one answer that another lacks. An emergency asks nothing, so it lacks none.</summary>
    public static IReadOnlyList<string> HoldsBeyond(Picture one, Picture other)
        => other.Outcome == Outcome.Emergency ? [] : [.. one.Holds.Except(other.Holds, StringComparer.Ordinal)];

    /// <summary>Variants that are ranked both times, in the order of the first answer.</summary>
    public static List<(PicturedVariant Before, PicturedVariant After)> Pairs(Picture before, Picture after)
    {
        var others = after.Ranked.ToDictionary(r => r.Id, StringComparer.Ordinal);
        return [.. before.Ranked.Where(r => others.ContainsKey(r.Id)).Select(r => (r, others[r.Id]))];
    }

    /// <summary>Keys of the set-up in which two variants differ.</summary>
    public static IEnumerable<string> SetUpKeys(PicturedVariant before, PicturedVariant after)
        => _setUpKeys.Where(k => before.Wishes.Word(k) != after.Wishes.Word(k));

    private static string? First(Picture picture) => picture.Ranked.Count > 0 ? picture.Ranked[0].Id : null;

    // A clear first and one that is tied are different answers to the question what to pull.
    private static string TiedFirsts(Picture picture) => string.Join('+', picture.Ranked.Where(r => r.Tied).Select(r => r.Id).Order(StringComparer.Ordinal));

    private static bool Same(IReadOnlyList<string> a, IReadOnlyList<string> b)
        => a.SequenceEqual(b) || a.ToHashSet(StringComparer.Ordinal).SetEquals(b);

    private static bool SamePoints(PicturedVariant a, PicturedVariant b, IReadOnlyList<string> criteriaA, IReadOnlyList<string> criteriaB)
    {
        if (criteriaA.SequenceEqual(criteriaB))
            return a.Points.SequenceEqual(b.Points);
        var ofB = criteriaB.Select((c, i) => (c, i)).ToDictionary(p => p.c, p => b.Points[p.i], StringComparer.Ordinal);
        return criteriaA.Select((c, i) => (c, i)).All(p => ofB.GetValueOrDefault(p.c) == a.Points[p.i]);
    }
}
