using System.CommandLine;
using HingeSelector.Cli.Frame;

namespace HingeSelector.Cli.Comparing;

/// <summary>The options of every verb that asks about a whole roster twice.</summary>
/// <param name="Roster">Roster file.</param>
/// <param name="Room">Room file; null for none.</param>
/// <param name="Standing">File of standing choices and philosophies of record; null for none.</param>
/// <param name="On">Day of the answers.</param>
/// <param name="AsJson">Whether one JSON document is asked for.</param>
public sealed record SquadOptions(string Roster, string? Room, string? Standing, DateOnly On, bool AsJson)
{
    private const string Table = "table";
    private const string Json = "json";

    private static readonly string[] _formats = [Table, Json];

    /// <summary>The options as declared on a verb.</summary>
    /// <param name="Roster">Roster.</param>
    /// <param name="Room">Room.</param>
    /// <param name="Standing">Standing choices.</param>
    /// <param name="On">Day.</param>
    /// <param name="Format">Format.</param>
    public sealed record Declared(Option<string?> Roster, Option<string?> Room, Option<string?> Standing, Option<string?> On, Option<string?> Format);

    /// <summary>Declares them.</summary>
    /// <param name="value">Adds an option to the verb.</param>
    public static Declared Declare(Func<string, string, string, Option<string?>> value) => new(
        value("--roster", "FILE", "Athletes, one a row (CSV); - reads standard input."),
        value("--room", "FILE", "What the room has (YAML)."),
        value("--standing", "FILE", "What athletes pull in the present block, and the philosophies of record (YAML)."),
        value("--on", "DATE", "Day of the answers, such as 2026-11-24 (default: today)."),
        value("--format", "FORMAT", $"{string.Join(", ", _formats)} (default: {Table})."));

    /// <summary>Reads them.</summary>
    /// <exception cref="UsageException">Something cannot be.</exception>
    public static SquadOptions Read(ParseResult line, Declared declared, string verb, TimeProvider clock)
    {
        var roster = line.GetValue(declared.Roster) ?? throw new UsageException($"'{verb}' needs a roster.", "Give '--roster FILE'.");
        var (room, standing) = (line.GetValue(declared.Room), line.GetValue(declared.Standing));
        if (new[] { roster, room, standing }.Count(f => f == "-") > 1)
            throw new UsageException("Standard input can be read for one option only.", "Give '-' once.");
        var format = line.GetValue(declared.Format) ?? Table;
        if (!_formats.Contains(format))
            throw new UsageException($"'{format}' is not a format.", Slip.DidYouMeanOneOf(format, _formats));
        return new SquadOptions(roster, room, standing, Day.Read(line.GetValue(declared.On), clock), format == Json);
    }
}
