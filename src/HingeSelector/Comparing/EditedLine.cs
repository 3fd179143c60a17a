using HingeSelector.Diagnostics;

namespace HingeSelector.Comparing;

/// <summary>One line that differs between two versions of the rules.</summary>
/// <param name="What">The keys that lead to it inside its element; empty for the element itself.</param>
/// <param name="Before">What stood there; null when it is new.</param>
/// <param name="After">What stands there; null when it is gone.</param>
/// <param name="Span">Where: in the second version, or in the first when it is gone.</param>
public sealed record EditedLine(string What, string? Before, string? After, SourceSpan Span);
