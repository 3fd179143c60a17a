namespace HingeSelector.Posture;

/// <summary>The grips that belong to a variant. <see cref="GripRange"/> turns them into widths for one body.</summary>
/// <param name="Basis">What the two ends measure.</param>
/// <param name="From">One end, in the unit of the basis.</param>
/// <param name="To">The other end.</param>
public sealed record GripRule(GripBasis Basis, double From, double To);
