namespace HingeSelector.Examples.Squads;

/// <summary>One difference between two decisions for one athlete.</summary>
/// <param name="Athlete">Id of the athlete.</param>
/// <param name="Kind">What differs.</param>
/// <param name="Variant">The variant that it is about; null where it is about the whole answer.</param>
/// <param name="Before">What was recorded; empty when it is new.</param>
/// <param name="After">What is decided now; empty when it is gone.</param>
public sealed record SquadChange(string Athlete, ChangeKind Kind, string? Variant, string Before, string After);
