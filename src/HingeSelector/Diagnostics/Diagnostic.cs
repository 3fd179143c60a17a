namespace HingeSelector.Diagnostics;

/// <summary>One fault found in what people wrote: where, what, what was expected, how to mend it.</summary>
/// <param name="Id">Stable id, HS1xxx reading, HS2xxx vocabulary and types, HS3xxx rule logic, HS5xxx numbers and rosters.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="Span">Where.</param>
/// <param name="Message">What is wrong and what was expected, in one sentence.</param>
/// <param name="Hint">How to mend it; null when the message says it.</param>
public sealed record Diagnostic(string Id, Severity Severity, SourceSpan Span, string Message, string? Hint = null);
