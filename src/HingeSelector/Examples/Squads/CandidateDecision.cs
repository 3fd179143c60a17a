namespace HingeSelector.Examples.Squads;

/// <summary>One candidate of a decision.</summary>
/// <param name="Variant">Id of the variant.</param>
/// <param name="Place">Place from 1; ties share it.</param>
/// <param name="Score">Weighted points.</param>
/// <param name="Points">Points by criterion.</param>
/// <param name="FirstTry">First try and band of the hand height, in cm; null where the model covers no height.</param>
/// <param name="Grip">First try of the grip, in cm; null where there is none.</param>
/// <param name="SetUp">What rules ask of straps, load, speed and the like.</param>
/// <param name="Cues">Cues in order.</param>
/// <param name="Cautions">Cautions about the candidate.</param>
public sealed record CandidateDecision(
    string Variant,
    int Place,
    int Score,
    IReadOnlyDictionary<string, int> Points,
    string? FirstTry,
    string? Grip,
    IReadOnlyList<string> SetUp,
    IReadOnlyList<string> Cues,
    IReadOnlyList<string> Cautions);
