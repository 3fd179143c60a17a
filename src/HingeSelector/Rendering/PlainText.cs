namespace HingeSelector.Rendering;

/// <summary>Lays lines out as plain text of limited width: the same on a terminal and in a pipe.</summary>
public static class PlainText
{
    /// <summary>Columns that a row takes at most.</summary>
    public const int Width = 108;

    private const int Indent = 3;
    private const int LabelColumn = 10;

    /// <summary>The rows of a line, without escape sequences.</summary>
    public static IReadOnlyList<string> Rows(Line line)
    {
        switch (line.Kind)
        {
            case LineKind.Title:
                return Hang("", line.Body, 4);
            case LineKind.Heading:
                return Hang(" ", line.Body, 5);
            case LineKind.Faint:
                return Hang(" ", line.Body, 1);
            default:
                var label = new string(' ', Indent) + line.Label.PadRight(LabelColumn);
                // A label that is too long for its column takes a row of its own.
                return line.Label.Length < LabelColumn ? Hang(label, line.Body, Indent + LabelColumn) : [label.TrimEnd(), .. Hang(new string(' ', Indent + LabelColumn), line.Body, Indent + LabelColumn)];
        }
    }

    /// <summary>Breaks a text between words.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var rows = new List<string>();
        var row = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (row.Length > 0 && row.Length + 1 + word.Length > width)
            {
                rows.Add(row);
                row = "";
            }
            row = row.Length == 0 ? word : $"{row} {word}";
        }
        rows.Add(row);
        return rows;
    }

    private static List<string> Hang(string first, string text, int indent)
        => [.. Wrap(Clean(text), Width - indent).Select((row, i) => ((i == 0 ? first : new string(' ', indent)) + row).TrimEnd())];

    // A name typed by people may hold anything; what would move the cursor does not reach the terminal.
    private static string Clean(string text) => text.Any(char.IsControl) ? new string([.. text.Select(c => char.IsControl(c) ? ' ' : c)]) : text;
}
