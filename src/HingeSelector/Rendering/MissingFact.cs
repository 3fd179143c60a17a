namespace HingeSelector.Rendering;

/// <summary>A fact that rules wait for.</summary>
/// <param name="Word">The word.</param>
/// <param name="Rules">How many rules wait for it.</param>
/// <param name="State">Why it is missing.</param>
public sealed record MissingFact(string Word, int Rules, string State);
