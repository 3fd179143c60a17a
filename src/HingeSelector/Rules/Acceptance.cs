using HingeSelector.Diagnostics;

namespace HingeSelector.Rules;

/// <summary>A warning that somebody has looked at and lets stand, with the reason.</summary>
/// <param name="Code">Id of the warning.</param>
/// <param name="Of">Names of the rules, sources, words or findings for which it holds.</param>
/// <param name="Because">Why.</param>
/// <param name="Span">Where.</param>
public sealed record Acceptance(string Code, IReadOnlyList<string> Of, string Because, SourceSpan Span);
