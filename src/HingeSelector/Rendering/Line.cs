namespace HingeSelector.Rendering;

/// <summary>A line of an answer before it is laid out for a terminal or a document.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Label">What stands in the column before it; empty when the line continues the label above or has none.</param>
/// <param name="Body">The text, unwrapped.</param>
public sealed record Line(LineKind Kind, string Label, string Body)
{
    /// <summary>A title.</summary>
    public static Line Title(string text) => new(LineKind.Title, "", text);

    /// <summary>A heading.</summary>
    public static Line Heading(string text) => new(LineKind.Heading, "", text);

    /// <summary>A labelled text.</summary>
    public static Line Text(string label, string text) => new(LineKind.Text, label, text);

    /// <summary>A faint text.</summary>
    public static Line Faint(string text) => new(LineKind.Faint, "", text);
}
