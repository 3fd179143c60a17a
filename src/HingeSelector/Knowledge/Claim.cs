namespace HingeSelector.Knowledge;

/// <summary>What a variant trains, spares or asks.</summary>
/// <param name="Kind">trains, spares or asks.</param>
/// <param name="Text">The claim.</param>
/// <param name="Grade">How far to trust it.</param>
/// <param name="Disputed">Whether published evidence points both ways or against.</param>
/// <param name="Against">The other side of a disputed claim; null otherwise.</param>
/// <param name="Sources">Ids of sources.</param>
public sealed record Claim(string Kind, string Text, Grade Grade, bool Disputed, string? Against, IReadOnlyList<string> Sources);
