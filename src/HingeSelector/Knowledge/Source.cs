using HingeSelector.Diagnostics;

namespace HingeSelector.Knowledge;

/// <summary>An entry of the bibliography.</summary>
/// <param name="Id">Name used in rules.</param>
/// <param name="Cite">The citation.</param>
/// <param name="Kind">trial, laboratory, survey, review, consensus, textbook, proposal or data.</param>
/// <param name="Read">How it was read: full, abstract, secondary, memory or own.</param>
/// <param name="Sample">Who was studied; null when it does not say.</param>
/// <param name="Note">A remark; null without one.</param>
/// <param name="Span">Where.</param>
public sealed record Source(string Id, string Cite, string Kind, string Read, string? Sample, string? Note, SourceSpan Span)
{
    /// <summary>retracted or superseded; null while it stands.</summary>
    public string? Status { get; init; }
}
