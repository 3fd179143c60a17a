namespace HingeSelector.Diagnostics;

/// <summary>One fault found in what people wrote: where, what, what was expected, how to mend it.</summary>
/// <param name="Id">Stable id, HS1xxx reading, HS2xxx vocabulary and types, HS3xxx rule logic, HS5xxx numbers and rosters.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="Span">Where.</param>
/// <param name="Message">What is wrong and what was expected, in one sentence.</param>
/// <param name="Hint">How to mend it; null when the message says it.</param>
public sealed record Diagnostic(string Id, Severity Severity, SourceSpan Span, string Message, string? Hint = null)
{
    /// <summary>Id of the rule, source, word or finding that it is about; null when it is about a place alone.</summary>
    public string? Subject { get; init; }

    /// <summary>A screen that shows it, as an item for <c>tries:</c>; null without one.</summary>
    public string? Witness { get; init; }

    /// <summary>The edit that would mend it; null where only the author can say.</summary>
    public SuggestedEdit? Edit { get; init; }

    /// <summary>The page about this kind of fault, from the folder that holds rules and content.</summary>
    public string Page => $"content/diagnostics/{Id}.md";
}
