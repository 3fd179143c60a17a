namespace HingeSelector.Diagnostics;

/// <content>Vocabulary and types: HS2xxx.</content>
public static partial class Problems
{
    /// <summary>HS2001: a word that no vocabulary holds.</summary>
    public static Diagnostic UnknownWord(SourceSpan at, string word, IReadOnlyCollection<string> known) => Error("HS2001", at, $"'{word}' is not a word of the vocabulary.", DidYouMean(word, known)) with { Edit = Respelt(at, word, known) };

    /// <summary>HS2002: a value that is not in the closed list of a word.</summary>
    public static Diagnostic UnknownValue(SourceSpan at, string value, string word, IReadOnlyCollection<string> values)
        => Error("HS2002", at, $"'{value}' is not a value of '{word}'; expected {OneOf(values)}.", NearestName.Find(value, values) is { } near ? $"Did you mean '{near}'?" : null) with { Edit = Respelt(at, value, values) };

    /// <summary>HS2003: a number that cannot be read, or its unit.</summary>
    public static Diagnostic BadQuantity(SourceSpan at, string word, string problem) => Error("HS2003", at, $"'{word}': {problem}.");

    /// <summary>HS2004: a number outside what can be right.</summary>
    public static Diagnostic OutOfRange(SourceSpan at, string word, string value, string low, string high)
        => Error("HS2004", at, $"'{word}' is {value}, outside {low} to {high}.", "Check the number, its unit, and whether two values were swapped.");

    /// <summary>HS2005: a number that is possible but seldom.</summary>
    public static Diagnostic Unusual(SourceSpan at, string word, string value, string low, string high)
        => Warning("HS2005", at, $"'{word}' is {value}; most athletes are between {low} and {high}.", "Measure again if in doubt; the value is used as typed.");

    /// <summary>HS2006: an id twice.</summary>
    public static Diagnostic DuplicateId(SourceSpan at, string kind, string id, SourceSpan first) => Error("HS2006", at, $"The {kind} '{id}' exists already at {first.FileAndLine}.", "Give one of the two another id.");

    /// <summary>HS2007: a source that is not in the bibliography.</summary>
    public static Diagnostic UnknownSource(SourceSpan at, string id, IReadOnlyCollection<string> known) => Error("HS2007", at, $"'{id}' is not in rules/sources.yaml.", DidYouMean(id, known)) with { Edit = Respelt(at, id, known) };

    /// <summary>HS2008: an id in the wrong form.</summary>
    public static Diagnostic BadId(SourceSpan at, string id) => Error("HS2008", at, $"'{id}' is not a plain id: small letters, digits and hyphens, starting with a letter.", $"Write it like '{Suggest(id)}'.");

    /// <summary>HS2009: a word that needs a reading, or a reading that it does not have.</summary>
    public static Diagnostic BadReading(SourceSpan at, string word, string? reading, IReadOnlyCollection<string> readings)
        => reading is null
            ? Error("HS2009", at, $"'{word}' needs a reading: {OneOf(readings)}.", $"For example '{word}, {readings.First()}'.")
            : readings.Count == 0
                ? Error("HS2009", at, $"'{word}' has no readings; remove ', {reading}'.")
                : Error("HS2009", at, $"'{reading}' is not a reading of '{word}'; expected {OneOf(readings)}.", NearestName.Find(reading, readings) is { } near ? $"Did you mean '{word}, {near}'?" : null) with { Edit = Respelt(at, reading, readings) };

    /// <summary>HS2010: a condition in a form that the kind of word does not take.</summary>
    public static Diagnostic BadCondition(SourceSpan at, string word, string condition, string forms) => Error("HS2010", at, $"'{condition}' is not a condition for '{word}'.", $"Write {forms}.");

    /// <summary>HS2011: the low end is above the high end.</summary>
    public static Diagnostic EmptyRange(SourceSpan at, string text) => Error("HS2011", at, $"'{text}' holds for no number: the low end is above the high end.", "Swap the two numbers.") with { Edit = Swapped(at, text) };

    /// <summary>HS2012: a date that cannot be read.</summary>
    public static Diagnostic BadDate(SourceSpan at, string text) => Error("HS2012", at, $"'{text}' is not a date.", "Write year-month-day, for example 2026-11-24.");

    /// <summary>HS2013: one side of a value that has none.</summary>
    public static Diagnostic ValueWithoutSide(SourceSpan at, string word, string value, string side) => Error("HS2013", at, $"'{value}' has no sides, so '{word}, {side}' never holds it.", $"Read it with the bare word: '{word}: includes {value}'.");

    // Only the author knows whether the ends were exchanged or one of them is wrong, so this is offered and not made.
    private static SuggestedEdit? Swapped(SourceSpan at, string text)
    {
        var words = text.Split(' ');
        var middle = Array.FindIndex(words, w => w is "to" or "and");
        if (words.Length < 4 || middle < 2)
            return null;
        (words[1], words[middle + 1]) = (words[middle + 1], words[1]);
        var swapped = string.Join(' ', words);
        return SuggestedEdit.Of(at, swapped, $"write '{swapped}'", false);
    }

    private static string OneOf(IReadOnlyCollection<string> values)
        => values.Count == 1 ? $"'{values.First()}'" : string.Join(", ", values.Take(values.Count - 1)) + " or " + values.Last();

    private static string Suggest(string id)
    {
        var plain = new string([.. id.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]).Trim('-');
        return plain.Length == 0 || !char.IsAsciiLetter(plain[0]) ? "a-" + plain : plain;
    }
}
