namespace HingeSelector.Diagnostics;

/// <summary>Every way in which a file can be wrong, one named factory each: this file is the register of ids.</summary>
public static partial class Problems
{
    /// <summary>HS1001: the file holds nothing.</summary>
    public static Diagnostic EmptyFile(SourceSpan at) => Error("HS1001", at, "The file is empty; expected YAML.");

    /// <summary>HS1002: a tab indents a line.</summary>
    public static Diagnostic Tab(SourceSpan at) => Error("HS1002", at, "A tab indents this line; YAML wants spaces.", "Replace each tab with two spaces.") with { Edit = WithoutTabs(at) };

    /// <summary>HS1003: the text is not YAML.</summary>
    public static Diagnostic NotYaml(SourceSpan at, string why) => Error("HS1003", at, $"This is not readable as YAML: {why.TrimEnd('.')}.", "Check indentation, quotes and brackets on this line and the one above.");

    /// <summary>HS1004: an anchor or alias.</summary>
    public static Diagnostic Anchor(SourceSpan at, string text) => Error("HS1004", at, $"'{text}' is an anchor or alias; rule and screen files do without them.", "Write the value out in full, or quote it if a plain text was meant.");

    /// <summary>HS1005: a tag.</summary>
    public static Diagnostic Tag(SourceSpan at, string text) => Error("HS1005", at, $"'{text}' is a YAML tag; rule and screen files do without them.", "Remove it, or quote the value if a plain text was meant.");

    /// <summary>HS1006: a key twice in one map.</summary>
    public static Diagnostic RepeatedKey(SourceSpan at, string key, SourceSpan first) => Error("HS1006", at, $"'{key}' is written twice in one map (first in line {first.Line + 1}); only one could count.", "Remove one of the two.");

    /// <summary>HS1007: a second document.</summary>
    public static Diagnostic SecondDocument(SourceSpan at) => Error("HS1007", at, "A second YAML document starts here; one file holds one.", "Move it to a file of its own.");

    /// <summary>HS1008: a key that is not text.</summary>
    public static Diagnostic KeyIsNotText(SourceSpan at) => Error("HS1008", at, "A key must be plain text.");

    /// <summary>HS1009: the wrong kind of node.</summary>
    public static Diagnostic WrongShape(SourceSpan at, string what, string expected, string found) => Error("HS1009", at, $"{what} should be {expected}, but this is {found}.");

    /// <summary>HS1010: a key that is not known here.</summary>
    public static Diagnostic UnknownKey(SourceSpan at, string key, string where, IReadOnlyCollection<string> known)
        => Error("HS1010", at, $"'{key}' is not a key of {where}.", DidYouMean(key, known)) with { Edit = Respelt(at, key, known) };

    /// <summary>HS1011: a key is missing.</summary>
    public static Diagnostic MissingKey(SourceSpan at, string key, string where) => Error("HS1011", at, $"{Capital(where)} lacks '{key}'.", $"Add a line '{key}: ...'.");

    /// <summary>HS1012: a value that other YAML readers turn into something else.</summary>
    public static Diagnostic YamlTrap(SourceSpan at, string value, string expected) => Error("HS1012", at, $"'{value}' is read differently by different YAML readers; expected {expected}.", "Write the word in full, or quote it.");

    /// <summary>HS1013: a file cannot be opened.</summary>
    public static Diagnostic CannotOpen(string path, string why) => Error("HS1013", SourceSpan.None, $"'{path}' cannot be read: {why.TrimEnd('.')}.", "Check the path and the permissions.");

    /// <summary>HS1014: a folder or file that the rules need is missing.</summary>
    public static Diagnostic MissingFile(string path, string why) => Error("HS1014", SourceSpan.None, $"'{path}' is missing: {why}.");

    private static Diagnostic Error(string id, SourceSpan at, string message, string? hint = null) => new(id, Severity.Error, at, message, hint);

    private static Diagnostic Warning(string id, SourceSpan at, string message, string? hint = null) => new(id, Severity.Warning, at, message, hint);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The edit that writes the nearest name instead of what was typed; safe when nothing else comes near it.</summary>
    private static SuggestedEdit? Respelt(SourceSpan at, string typed, IReadOnlyCollection<string> known)
    {
        if (typed.Length == 0 || at.Source is null || NearestName.Guess(typed, known) is not { } near)
            return null;
        var line = at.Source.Line(at.Line);
        var from = Math.Min(at.Column, line.Length);
        var place = line.IndexOf(typed, from, Math.Clamp(at.Length, 0, line.Length - from), StringComparison.Ordinal);
        return place < 0 ? null : SuggestedEdit.Of(at with { Column = place, Length = typed.Length }, near.Name, $"write '{near.Name}' instead of '{typed}'", near.Sure);
    }

    private static SuggestedEdit? WithoutTabs(SourceSpan at)
    {
        var line = at.Source?.Line(at.Line) ?? "";
        var indent = line[..(line.Length - line.TrimStart(' ', '\t').Length)];
        return SuggestedEdit.Of(at with { Column = 0, Length = indent.Length }, indent.Replace("\t", "  ", StringComparison.Ordinal), "indent with spaces", true);
    }

    private static string DidYouMean(string typed, IReadOnlyCollection<string> known)
    {
        var near = NearestName.Find(typed, known);
        return near is not null
            ? $"Did you mean '{near}'?"
            : known.Count <= 12 ? $"Known here: {string.Join(", ", known)}." : "See rules/vocabulary.yaml and content/rule-language.md for the words.";
    }
}
