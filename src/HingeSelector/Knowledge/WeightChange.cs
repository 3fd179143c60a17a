using HingeSelector.Diagnostics;

namespace HingeSelector.Knowledge;

/// <summary>A weight that a philosophy changes.</summary>
/// <param name="Criterion">Index of the criterion.</param>
/// <param name="Before">Weight in the base.</param>
/// <param name="After">Weight under the philosophy.</param>
/// <param name="Span">Where.</param>
public sealed record WeightChange(int Criterion, int Before, int After, SourceSpan Span);
