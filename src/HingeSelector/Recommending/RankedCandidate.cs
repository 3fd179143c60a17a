using HingeSelector.Candidates;

namespace HingeSelector.Recommending;

/// <summary>A candidate with its place and everything that speaks for and against it.</summary>
public sealed record RankedCandidate
{
    /// <summary>Place from 1; tied candidates share the place of the best of them.</summary>
    public required int Place { get; init; }

    /// <summary>Whether its distance to the first is smaller than one step of a single weight or within the errors.</summary>
    public required bool TiedWithFirst { get; init; }

    /// <summary>The candidate with its set-up.</summary>
    public required Candidate Candidate { get; init; }

    /// <summary>Weighted points.</summary>
    public required int Score { get; init; }

    /// <summary>Points by criterion after clamping to -3 .. +3.</summary>
    public required IReadOnlyList<int> Points { get; init; }

    /// <summary>Reasons, the heaviest first.</summary>
    public required IReadOnlyList<Reason> Reasons { get; init; }

    /// <summary>Set-up changes that rules asked, merged.</summary>
    public required SetUpWishes Wishes { get; init; }

    /// <summary>The rules behind the set-up changes.</summary>
    public required IReadOnlyList<AskedChange> Changes { get; init; }

    /// <summary>Cues, the most particular first, without those that a rule withholds.</summary>
    public required IReadOnlyList<Cue> Cues { get; init; }

    /// <summary>Cautions that belong to this candidate.</summary>
    public required IReadOnlyList<CandidateCaution> Cautions { get; init; }

    /// <summary>Whether it is the standing choice.</summary>
    public required bool IsStanding { get; init; }

    /// <summary>Heights that would do, each with what it costs against the first try; looked up when asked for.</summary>
    public required Lazy<IReadOnlyList<AlternativeSetUp>> Heights { get; init; }

    /// <summary>Grips that would do, each with what it costs against the first try; looked up when asked for.</summary>
    public required Lazy<IReadOnlyList<AlternativeSetUp>> Grips { get; init; }
}
