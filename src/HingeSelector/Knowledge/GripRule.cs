namespace HingeSelector.Knowledge;

/// <summary>How wide the hands are, between the middle fingers.</summary>
/// <param name="Kind">What the number is relative to.</param>
/// <param name="Value">Metres for <see cref="GripRuleKind.Absolute"/>, a share of 1 for <see cref="GripRuleKind.ElbowToElbow"/>; unused otherwise.</param>
public readonly record struct GripRule(GripRuleKind Kind, double Value);
