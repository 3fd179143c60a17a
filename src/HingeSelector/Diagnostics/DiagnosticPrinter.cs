using System.Text;

namespace HingeSelector.Diagnostics;

/// <summary>Prints faults for people: place, message, the author's own line with the part underlined, how to mend it.</summary>
public static class DiagnosticPrinter
{
    /// <summary>All faults as text, one blank line between two.</summary>
    public static string Print(IEnumerable<Diagnostic> diagnostics)
    {
        var text = new StringBuilder();
        foreach (var diagnostic in diagnostics)
        {
            if (text.Length > 0)
                text.Append('\n');
            PrintOne(text, diagnostic);
        }
        return text.ToString();
    }

    private static void PrintOne(StringBuilder text, Diagnostic d)
    {
        var place = d.Span.Source is null ? "" : $"{d.Span}: ";
        text.Append(place).Append(d.Severity == Severity.Error ? "error " : "warning ").Append(d.Id).Append(": ").Append(d.Message).Append('\n');
        if (d.Span.Source is not null)
        {
            var line = d.Span.Source.Line(d.Span.Line);
            text.Append("    ").Append(line.Replace('\t', ' ')).Append('\n');
            var column = Math.Min(d.Span.Column, line.Length);
            var length = Math.Clamp(d.Span.Length, 1, Math.Max(1, line.Length - column));
            text.Append("    ").Append(' ', column).Append('^', length).Append('\n');
        }
        if (d.Hint is not null)
            text.Append("  ").Append(d.Hint).Append('\n');
    }
}
