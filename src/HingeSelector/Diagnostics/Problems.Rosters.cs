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

    /// <summary>HS5014: a group that cannot be answered with one line.</summary>
    public static Diagnostic GroupWithoutBlanket(SourceSpan at, string group) => Error("HS5014", at, $"The group '{group}' cannot be answered with one line.", "Answer its words one by one.");

    /// <summary>HS5015: two sides where the word has none.</summary>
    public static Diagnostic NoSidesExpected(SourceSpan at, string word) => Error("HS5015", at, $"'{word}' has no left and right.", $"Write one value: '{word}: ...'.");

    /// <summary>HS5016: a last day before the first one.</summary>
    public static Diagnostic EndsBeforeItBegins(SourceSpan at, string what, string last, string first) => Error("HS5016", at, $"{what} ends on {last}, before it begins ({first}).", "Check the two dates; perhaps they were exchanged.");

    /// <summary>HS5017: a value typed for a word that is not about an athlete or that the program works out.</summary>
    public static Diagnostic NotTyped(SourceSpan at, string word, string why) => Error("HS5017", at, $"'{word}' {why}; it is not typed for an athlete.", "Remove it.");

    /// <summary>HS5018: a column that every roster needs.</summary>
    public static Diagnostic MissingColumn(SourceSpan at, string column) => Error("HS5018", at, $"The header has no column '{column}'.", "Add it, or start from 'hinge-selector screen template'.");

    /// <summary>HS5019: a value in a column without a name.</summary>
    public static Diagnostic ValueWithoutColumn(SourceSpan at, string value) => Error("HS5019", at, $"'{value}' stands in a column that has no name in the header.", "Name the column, or empty the cell.");

    /// <summary>HS5020: text between a closing quote and the next separator.</summary>
    public static Diagnostic TextAfterQuote(SourceSpan at) => Error("HS5020", at, "Text follows the closing quote of this cell.", "Put all of the cell inside the quotes, and double a quote that belongs to the text.");

    /// <summary>HS5021: measures of a screen without a date.</summary>
    public static Diagnostic ScreenWithoutDate(SourceSpan at, string hint) => Error("HS5021", at, "The screen has no date, so nobody can tell how old its measures are.", hint);

    /// <summary>HS5022: answers of a day without a date, taken for those of another day.</summary>
    public static Diagnostic DayDateTaken(SourceSpan at, string day, string on, string hint) => Warning("HS5022", at, $"These answers have no date; the latest date in the file is {day}, so they are taken to be from then and not from {on}.", hint);

    /// <summary>HS5023: a count that is no whole number.</summary>
    public static Diagnostic NotACount(SourceSpan at, string what, string text, int most) => Error("HS5023", at, $"'{what}' is '{text}'; expected a whole number from 0 to {most}.");

    /// <summary>HS5024: the low handles of a hex bar are not below its high ones.</summary>
    public static Diagnostic HandlesExchanged(SourceSpan at, string low, string high) => Error("HS5024", at, $"The low handles ({low}) are not below the high handles ({high}).", "Exchange the two heights, or leave one out when the bar has handles at one height.");

    /// <summary>HS5025: one word answered in two places of one file.</summary>
    public static Diagnostic AnsweredTwice(SourceSpan at, string word, SourceSpan first) => Error("HS5025", at, $"'{word}' is answered twice (first in line {first.Line + 1}).", "Remove one of the two.");

    /// <summary>HS5035: a part of a cell that holds no held height.</summary>
    public static Diagnostic BadHeldHeight(SourceSpan at, string text) => Error("HS5035", at, $"'{text}' is not a held height.", "Write 'PULL; 34 cm; grip 56 cm; stance 32 cm; empty bar 26 cm; weight 60 kg' (all but pull and height may be left out), and ' | ' between two.");

    /// <summary>HS5036: two held heights for one pull.</summary>
    public static Diagnostic HeldTwice(SourceSpan at, string variant) => Error("HS5036", at, $"There are two held heights for '{variant}'; nobody can tell which is right.", "Keep the later one.");
}
