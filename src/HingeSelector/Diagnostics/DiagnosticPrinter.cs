using System.Text;

namespace HingeSelector.Diagnostics;

/// <summary>Prints faults for people: place, message, the author's own line with the part underlined, how to mend it.</summary>
public static class DiagnosticPrinter
{
    private const int Widest = 150;
    private const int Before = 60;
    private const string Cut = "...";

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
            var line = d.Span.Source.Line(d.Span.Line).Replace('\t', ' ');
            var column = Math.Min(d.Span.Column, line.Length);
            (line, column) = Window(line, column);
            text.Append("    ").Append(line).Append('\n');
            var length = Math.Clamp(d.Span.Length, 1, Math.Max(1, line.Length - column));
            text.Append("    ").Append(' ', column).Append('^', length).Append('\n');
        }
        if (d.Hint is not null)
            text.Append("  ").Append(d.Hint).Append('\n');
        if (d.Witness is not null)
            text.Append("  A screen that shows it, for 'tries':\n    ").Append(d.Witness.Replace("\n", "\n    ", StringComparison.Ordinal)).Append('\n');
    }

    /// <summary>Rows of a roster run over hundreds of characters; what stands around the fault is enough to find it.</summary>
    private static (string Line, int Column) Window(string line, int column)
    {
        if (line.Length <= Widest)
            return (line, column);
        var start = Math.Clamp(column - Before, 0, Math.Max(0, line.Length - Widest));
        var end = Math.Min(line.Length, start + Widest);
        var (left, right) = (start > 0 ? Cut : "", end < line.Length ? Cut : "");
        return (left + line[start..end] + right, column - start + left.Length);
    }
}
