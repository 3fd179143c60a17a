using HingeSelector.Screening;

namespace HingeSelector.Recommending;

/// <summary>The answer for one athlete on one day. Every surface renders this and nothing else.</summary>
public sealed record Recommendation
{
    private readonly Lazy<IReadOnlyList<OpenRule>> _open;

    /// <summary>Makes an answer.</summary>
    /// <param name="open">Looks up the rules that cannot be decided, when asked for.</param>
    public Recommendation(Func<IReadOnlyList<OpenRule>> open) => _open = new Lazy<IReadOnlyList<OpenRule>>(open);

    /// <summary>The athlete's file.</summary>
    public required AthleteRecord Athlete { get; init; }

    /// <summary>What kind of answer it is.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>Stops that hold, the highest level first; with an emergency only the emergencies.</summary>
    public required IReadOnlyList<StopNotice> Stops { get; init; }

    /// <summary>Labels of questions that must be answered first.</summary>
    public required IReadOnlyList<UnansweredQuestion> Unanswered { get; init; }

    /// <summary>Candidates in order; empty unless something may be pulled.</summary>
    public required IReadOnlyList<RankedCandidate> Ranked { get; init; }

    /// <summary>Variants that are out.</summary>
    public required IReadOnlyList<Exclusion> Excluded { get; init; }

    /// <summary>Findings that are present.</summary>
    public required IReadOnlyList<string> Findings { get; init; }

    /// <summary>Cautions about the athlete.</summary>
    public required IReadOnlyList<AthleteCaution> Cautions { get; init; }

    /// <summary>Every rule that holds, in order.</summary>
    public required IReadOnlyList<Rules.Evaluating.Firing> Fired { get; init; }

    /// <summary>Rules that cannot be decided.</summary>
    public IReadOnlyList<OpenRule> Open => _open.Value;

    /// <summary>Remarks on what the answer assumes, on the standing choice and on the model.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>What the answer rests on.</summary>
    public required Stamp Stamp { get; init; }
}
