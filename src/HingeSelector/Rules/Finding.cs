using HingeSelector.Diagnostics;

namespace HingeSelector.Rules;

/// <summary>A named fact about the athlete that rules conclude and other rules read.</summary>
/// <param name="Index">Place in the rule book.</param>
/// <param name="Id">Name.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Means">What it means.</param>
/// <param name="Span">Where.</param>
public sealed record Finding(int Index, string Id, string Label, string Means, SourceSpan Span);
