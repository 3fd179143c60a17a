namespace HingeSelector.Recommending;

/// <summary>A fact that a rule has read.</summary>
/// <param name="Word">Word and reading as written in the rule.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Value">Value with unit, or why there is none.</param>
public sealed record FactRead(string Word, string Label, string Value);
