namespace HingeSelector.Diagnostics;

/// <summary>A file as its author sees it: a short path and its lines.</summary>
public sealed class SourceText
{
    // Lines are cut only when a message shows one.
    private string[]? _lines;

    /// <summary>Wraps the text of one file.</summary>
    /// <param name="path">The path as printed in messages; never an absolute machine path.</param>
    /// <param name="text">The whole text.</param>
    public SourceText(string path, string text)
    {
        Path = path;
        Text = text;
    }

    /// <summary>The path as printed in messages.</summary>
    public string Path { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>How many lines it has.</summary>
    public int LineCount => Lines.Length;

    /// <summary>A line without its line end; empty when the line does not exist.</summary>
    /// <param name="line">Zero-based line number.</param>
    public string Line(int line)
    {
        var lines = Lines;
        return line >= 0 && line < lines.Length ? lines[line].TrimEnd('\r') : "";
    }

    private string[] Lines => _lines ??= Text.Split('\n');
}
