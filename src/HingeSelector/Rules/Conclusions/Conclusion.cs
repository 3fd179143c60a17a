namespace HingeSelector.Rules.Conclusions;

/// <summary>What follows when a rule's conditions hold.</summary>
public abstract record Conclusion;

/// <summary>A named fact about the athlete that other rules read.</summary>
/// <param name="Finding">Index of the finding.</param>
public sealed record FindingConclusion(int Finding) : Conclusion;

/// <summary>Do not pull today, or only what is allowed.</summary>
/// <param name="Level">How far it reaches.</param>
/// <param name="Answers">Who has to answer before a stop of level refer ends.</param>
/// <param name="See">Who to see.</param>
/// <param name="Say">What the coach reads.</param>
/// <param name="Allowed">Variants that a stop of level today still allows, one bit each.</param>
public sealed record StopConclusion(StopLevel Level, WhoAnswers Answers, string See, string Say, ulong Allowed) : Conclusion;

/// <summary>This variant not now.</summary>
/// <param name="Why">Why.</param>
public sealed record ExclusionConclusion(string Why) : Conclusion;

/// <summary>A change of the set-up.</summary>
/// <param name="Request">What is asked.</param>
public sealed record RequestConclusion(RequestedChange Request) : Conclusion;

/// <summary>Points for a criterion.</summary>
/// <param name="Amount">-3 to +3, not 0.</param>
/// <param name="Criterion">Index of the criterion.</param>
public sealed record PointsConclusion(int Amount, int Criterion) : Conclusion;

/// <summary>Something to say to the athlete.</summary>
/// <param name="Say">The words.</param>
/// <param name="Asks">What the words ask of the body.</param>
public sealed record CueConclusion(string Say, IReadOnlyList<string> Asks) : Conclusion;

/// <summary>Cues that must not be given.</summary>
/// <param name="Asks">What a withheld cue asks.</param>
public sealed record WithholdConclusion(IReadOnlyList<string> Asks) : Conclusion;

/// <summary>Something to beware of.</summary>
/// <param name="Text">The words.</param>
public sealed record CautionConclusion(string Text) : Conclusion;
