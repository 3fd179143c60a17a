using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Screening;

/// <summary>What somebody typed, from a YAML value or a cell of a roster, with its place.</summary>
/// <param name="Text">The text without its quotes.</param>
/// <param name="Quoted">Whether the author's text stays as it is in every reader: quoted in YAML, or a cell.</param>
/// <param name="Span">Where, quotes included.</param>
public sealed record Typed(string Text, bool Quoted, SourceSpan Span)
{
    private const int LongestQuotation = 80;

    /// <summary>Takes a YAML value.</summary>
    public static Typed From(YamlScalar scalar) => new(scalar.Value, scalar.Quoted, scalar.Span);

    /// <summary>Whether nothing is there.</summary>
    public bool IsBlank => string.IsNullOrWhiteSpace(Text);

    /// <summary>The text as a message may quote it: one line, and no more of it than helps to find it.</summary>
    public string Shown
    {
        get
        {
            var line = string.Join(' ', Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            return line.Length <= LongestQuotation ? line : line[..LongestQuotation] + "...";
        }
    }

    /// <summary>A piece of the text with its own place.</summary>
    /// <remarks>Where quotes were doubled or a guard was taken off, places inside no longer line up: then the whole is shown.</remarks>
    public Typed Part(int start, int length)
    {
        var piece = Text.Substring(start, length);
        var trimmed = piece.TrimStart();
        start += piece.Length - trimmed.Length;
        trimmed = trimmed.TrimEnd();
        return new Typed(trimmed, Quoted, SpanOf(start, trimmed.Length));
    }

    /// <summary>The pieces between separators.</summary>
    public IReadOnlyList<Typed> Split(char separator)
    {
        var parts = new List<Typed>();
        var start = 0;
        for (var i = 0; i <= Text.Length; i++)
        {
            if (i < Text.Length && Text[i] != separator)
                continue;
            parts.Add(Part(start, i - start));
            start = i + 1;
        }
        return parts;
    }

    private SourceSpan SpanOf(int start, int length)
    {
        var quotes = Span.Length - Text.Length;
        return quotes is 0 or 2 ? Span with { Column = Span.Column + (quotes / 2) + start, Length = length } : Span;
    }
}
