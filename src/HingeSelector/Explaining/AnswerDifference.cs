using HingeSelector.Knowledge;
using HingeSelector.Recommending;

namespace HingeSelector.Explaining;

/// <summary>What differs between two answers for the same athlete.</summary>
public sealed record AnswerDifference
{
    private static readonly string[] _byHand = ["straps", "lowering", "load", "repetitions", "speed", "footwear"];

    /// <summary>The first answer.</summary>
    public required Recommendation Before { get; init; }

    /// <summary>The second answer.</summary>
    public required Recommendation After { get; init; }

    /// <summary>Stops that are new.</summary>
    public required IReadOnlyList<StopNotice> NewStops { get; init; }

    /// <summary>Stops that no longer hold.</summary>
    public required IReadOnlyList<StopNotice> GoneStops { get; init; }

    /// <summary>Options that are out only in the second answer, each with its first reason.</summary>
    public required IReadOnlyList<(Variant Variant, string Why)> Lost { get; init; }

    /// <summary>Options that are out only in the first answer.</summary>
    public required IReadOnlyList<Variant> Returned { get; init; }

    /// <summary>Options in both rankings with another place, in the order of the second; places from 1.</summary>
    public required IReadOnlyList<(Variant Variant, int Before, int After)> Moved { get; init; }

    /// <summary>Options in both rankings whose set-up, band or dose differs, in the order of the second.</summary>
    public required IReadOnlyList<(RankedCandidate Before, RankedCandidate After)> SetUps { get; init; }

    /// <summary>Cues of the second first choice that the first answer did not give it.</summary>
    public required IReadOnlyList<string> NewCues { get; init; }

    /// <summary>Cues that the first answer gave the same pull.</summary>
    public required IReadOnlyList<string> GoneCues { get; init; }

    /// <summary>First choice before; null when nothing was ranked.</summary>
    public Variant? FirstBefore => Before.Ranked.Count > 0 ? Before.Ranked[0].Candidate.Variant : null;

    /// <summary>First choice after; null when nothing is ranked.</summary>
    public Variant? FirstAfter => After.Ranked.Count > 0 ? After.Ranked[0].Candidate.Variant : null;

    /// <summary>Whether the first choice is the same.</summary>
    public bool SameFirst => FirstBefore?.Index == FirstAfter?.Index;

    /// <summary>Whether nothing that is told differs.</summary>
    public bool IsEmpty => Before.Outcome == After.Outcome && NewStops.Count + GoneStops.Count + Lost.Count + Returned.Count + Moved.Count + SetUps.Count + NewCues.Count + GoneCues.Count == 0
        && SameFirst && Before.Unanswered.SequenceEqual(After.Unanswered);

    /// <summary>Compares two answers.</summary>
    public static AnswerDifference Of(Recommendation before, Recommendation after)
    {
        var stops = (Before: before.Stops.Select(s => s.Trace.Rule.Id).ToHashSet(StringComparer.Ordinal), After: after.Stops.Select(s => s.Trace.Rule.Id).ToHashSet(StringComparer.Ordinal));
        var pairs = after.Ranked.Select((a, i) => (After: a, Place: i, Was: PlaceOf(before, a.Candidate.Variant))).Where(p => p.Was >= 0).ToList();
        var (cuesBefore, cuesAfter) = Cues(before, after);
        return new AnswerDifference
        {
            Before = before,
            After = after,
            NewStops = [.. after.Stops.Where(s => !stops.Before.Contains(s.Trace.Rule.Id))],
            GoneStops = [.. before.Stops.Where(s => !stops.After.Contains(s.Trace.Rule.Id))],
            Lost = [.. after.Excluded.Where(e => PlaceOf(before, e.Variant) >= 0).Select(e => (e.Variant, e.Reasons[0].Why))],
            Returned = [.. before.Excluded.Where(e => PlaceOf(after, e.Variant) >= 0).Select(e => e.Variant)],
            Moved = [.. pairs.Where(p => p.Place != p.Was).Select(p => (p.After.Candidate.Variant, p.Was + 1, p.Place + 1))],
            SetUps = [.. pairs.Select(p => (Before: before.Ranked[p.Was], p.After)).Where(p => SetUpOf(p.Before) != SetUpOf(p.After))],
            NewCues = [.. cuesAfter.Except(cuesBefore, StringComparer.Ordinal)],
            GoneCues = [.. cuesBefore.Except(cuesAfter, StringComparer.Ordinal)],
        };
    }

    private static int PlaceOf(Recommendation answer, Variant variant)
    {
        for (var i = 0; i < answer.Ranked.Count; i++)
        {
            if (answer.Ranked[i].Candidate.Variant.Index == variant.Index)
                return i;
        }
        return -1;
    }

    // Cues of the pull that is first afterwards, before and after.
    private static (IReadOnlyList<string> Before, IReadOnlyList<string> After) Cues(Recommendation before, Recommendation after)
    {
        if (after.Ranked.Count == 0)
            return ([], []);
        var was = PlaceOf(before, after.Ranked[0].Candidate.Variant);
        return ([.. was < 0 ? [] : before.Ranked[was].Cues.Select(c => c.Say)], [.. after.Ranked[0].Cues.Select(c => c.Say)]);
    }

    // Everything that a coach sets by hand; spare degrees and their errors are no set-up.
    private static string SetUpOf(RankedCandidate ranked)
    {
        var choice = ranked.Candidate.Choice;
        var words = string.Join(',', _byHand.Select(ranked.Wishes.Word));
        return choice is null ? words : FormattableString.Invariant($"{choice.FirstTry}|{Band(choice.Heights)}|{Band(choice.Grips)}|{choice.Fit}|{words}");
    }

    private static string Band(Posture.LengthBand band)
        => FormattableString.Invariant($"{band.Fitting?.From}-{band.Fitting?.To};{band.Widened?.From}-{band.Widened?.To};{string.Join(',', band.Further.Select(f => $"{f.From}-{f.To}"))}");
}
