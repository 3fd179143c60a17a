namespace HingeSelector.Diagnostics;

/// <content>Screens, rosters, rooms: HS5xxx.</content>
public static partial class Problems
{
    /// <summary>HS5001: a column that no word names.</summary>
    public static Diagnostic UnknownColumn(SourceSpan at, string column, IReadOnlyCollection<string> known) => Error("HS5001", at, $"'{column}' is not a column that the vocabulary knows.", DidYouMean(column, known));

    /// <summary>HS5002: a column twice.</summary>
    public static Diagnostic RepeatedColumn(SourceSpan at, string column) => Error("HS5002", at, $"The column '{column}' appears twice.", "Remove one of the two.");

    /// <summary>HS5003: a row with the wrong number of cells.</summary>
    public static Diagnostic WrongCellCount(SourceSpan at, int row, int found, int expected) => Error("HS5003", at, $"Row {row} has {found} cells, the header has {expected}.", "Check for a missing or additional separator or quote.");

    /// <summary>HS5004: an athlete twice.</summary>
    public static Diagnostic RepeatedAthlete(SourceSpan at, string id) => Error("HS5004", at, $"The athlete '{id}' appears twice in this roster.", "Give each athlete one row.");

    /// <summary>HS5005: a date after the day of the answer.</summary>
    public static Diagnostic DateAhead(SourceSpan at, string what, string date, string on) => Error("HS5005", at, $"{what} is dated {date}, after the day of the answer ({on}).", "Correct the date, or run with a later --on.");

    /// <summary>HS5006: a blanket answer in the wrong form.</summary>
    public static Diagnostic BadBlanket(SourceSpan at, string group, string text, string blanket) => Error("HS5006", at, $"'{text}' is not an answer to all of '{group}'.", $"Write '{blanket}, asked by NAME on 2026-11-24'.");

    /// <summary>HS5007: a clearance in the wrong form.</summary>
    public static Diagnostic BadClearance(SourceSpan at, string text) => Error("HS5007", at, $"'{text}' is not a clearance.", "Write 'PROFESSION; WHO; DATE; valid until DATE; covers load-in-hand + spinal-load; cap 40 kg; seen by WHO' (the cap may be left out).");

    /// <summary>HS5008: a side where the word has none, or a missing side.</summary>
    public static Diagnostic SidesExpected(SourceSpan at, string word) => Error("HS5008", at, $"'{word}' has two sides.", $"Write '{word}: {{left: ..., right: ...}}'.");

    /// <summary>HS5009: no header or no rows.</summary>
    public static Diagnostic EmptyRoster(SourceSpan at) => Error("HS5009", at, "The roster holds no header row.", "Start from 'hinge-selector screen template'.");

    /// <summary>HS5010: an athlete without an id.</summary>
    public static Diagnostic MissingAthleteId(SourceSpan at) => Error("HS5010", at, "The row names no athlete: the column 'id' is empty.");

    /// <summary>HS5011: a value given for a part of the file where the word does not belong.</summary>
    public static Diagnostic WrongSection(SourceSpan at, string word, string section, string right) => Error("HS5011", at, $"'{word}' belongs under '{right}', not under '{section}'.", $"Move the line to '{right}:'.");

    /// <summary>HS5012: the standing list names someone who is not there.</summary>
    public static Diagnostic UnknownAthlete(SourceSpan at, string id) => Warning("HS5012", at, $"No athlete '{id}' is on the roster, so this standing choice is not used.");

    /// <summary>HS5013: a text cell that an open quote swallows.</summary>
    public static Diagnostic OpenQuote(SourceSpan at) => Error("HS5013", at, "A quoted cell is not closed.", "Close the quote, or double a quote that belongs to the text.");
}
