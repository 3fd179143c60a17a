namespace HingeSelector.Comparing;

/// <summary>Which edits change an athlete's answer.</summary>
/// <param name="Edits">Places in the list of edits.</param>
/// <param name="How">How that is known.</param>
public sealed record Cause(IReadOnlyList<int> Edits, CauseKind How);
