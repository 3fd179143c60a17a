using System.Text;

namespace HingeSelector.Rendering;

/// <summary>Lays lines out as a Markdown document for staff.</summary>
public static class MarkdownText
{
    private const string Special = @"\`*_{}[]<>#|~";

    /// <summary>The document.</summary>
    public static string Of(IEnumerable<Line> lines)
    {
        var text = new StringBuilder();
        LineKind? before = null;
        foreach (var line in lines)
        {
            // A list ends and a heading begins with an empty line.
            if (before is not null && (line.Kind != LineKind.Text || before != LineKind.Text))
                text.Append('\n');
            text.Append(line.Kind switch
            {
                LineKind.Title => "# " + Escape(line.Body),
                LineKind.Heading => "## " + Escape(line.Body),
                LineKind.Faint => Escape(line.Body),
                _ => (line.Label.Length == 0 ? "- " : $"- **{Escape(line.Label)}:** ") + Escape(line.Body.StartsWith("- ", StringComparison.Ordinal) ? line.Body[2..] : line.Body),
            }).Append('\n');
            before = line.Kind;
        }
        return text.ToString();
    }

    /// <summary>Text that Markdown shows as it is.</summary>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (char.IsControl(c))
            {
                escaped.Append(' ');
                continue;
            }
            if (Special.Contains(c, StringComparison.Ordinal))
                escaped.Append('\\');
            escaped.Append(c);
        }
        return escaped.ToString();
    }
}
