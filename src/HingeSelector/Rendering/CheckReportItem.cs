using HingeSelector.Diagnostics;

namespace HingeSelector.Rendering;

/// <summary>One diagnostic of a <see cref="CheckReport"/>. Lines and columns are one-based.</summary>
/// <param name="Code">Stable id.</param>
/// <param name="Severity">error or warning.</param>
/// <param name="Page">The page about this kind of fault.</param>
/// <param name="File">The file; null for a place that no file holds.</param>
/// <param name="Line">Line.</param>
/// <param name="Column">Column.</param>
/// <param name="Length">Characters that are meant.</param>
/// <param name="Text">The author's line.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Hint">How to mend it; null when the message says it.</param>
/// <param name="Subject">Id of what it is about; null for a place alone.</param>
/// <param name="Witness">A screen that shows it, as an item for <c>tries:</c>; null without one.</param>
/// <param name="Edit">The edit that would mend it; null where only the author can say.</param>
public sealed record CheckReportItem(string Code, string Severity, string Page, string? File, int? Line, int? Column, int? Length, string? Text, string Message, string? Hint, string? Subject, string? Witness, CheckReportEdit? Edit)
{
    /// <summary>Writes down a diagnostic.</summary>
    public static CheckReportItem Of(Diagnostic d)
    {
        var at = d.Span.Source is null ? null : d.Span;
        return new CheckReportItem(d.Id, d.Severity == Diagnostics.Severity.Error ? "error" : "warning", d.Page, at?.Source!.Path, at?.Line + 1, at?.Column + 1, at?.Length, at?.Source!.Line(at.Line),
            d.Message, d.Hint, d.Subject, d.Witness, d.Edit is null ? null : CheckReportEdit.Of(d.Edit));
    }
}
