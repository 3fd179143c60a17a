using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Between which heights above the floor the hips may be at the start.</summary>
/// <param name="Lowest">The lowest.</param>
/// <param name="Highest">The highest.</param>
public readonly record struct HipHeightWindow(Length Lowest, Length Highest);
