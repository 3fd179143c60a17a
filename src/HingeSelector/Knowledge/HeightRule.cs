namespace HingeSelector.Knowledge;

/// <summary>Where the hands start.</summary>
/// <param name="Kind">What decides the height.</param>
/// <param name="Value">Metres for <see cref="HeightRuleKind.Absolute"/>, a share of 1 for <see cref="HeightRuleKind.KneeHeight"/>; unused otherwise.</param>
public readonly record struct HeightRule(HeightRuleKind Kind, double Value);
