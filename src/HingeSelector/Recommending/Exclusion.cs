using HingeSelector.Knowledge;

namespace HingeSelector.Recommending;

/// <summary>A variant that is out, with every reason.</summary>
/// <param name="Variant">The variant.</param>
/// <param name="Reasons">Why, each with the rule behind it.</param>
public sealed record Exclusion(Variant Variant, IReadOnlyList<ExclusionReason> Reasons);
