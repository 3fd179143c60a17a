using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Examples.Squads;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules record</c>: keeps the decisions for a roster as a golden squad.</summary>
public sealed class RulesRecordVerb : Verb
{
    private const string StandardOutput = "-";

    private readonly Option<string?> _roster;
    private readonly Option<string?> _room;
    private readonly Option<string?> _standing;
    private readonly Option<string?> _on;
    private readonly Option<string?> _philosophy;
    private readonly Option<string?> _to;

    /// <summary>Declares the options.</summary>
    public RulesRecordVerb()
        : base("record", "Keep the decisions for a roster, with all that they rest on, to replay them after a change of the rules.")
    {
        _roster = Value("--roster", "FILE", "Athletes, one a row (CSV).");
        _room = Value("--room", "FILE", "What the room has (YAML).");
        _standing = Value("--standing", "FILE", "What athletes pull in the present block (YAML).");
        _on = Value("--on", "DATE", "Day of the decisions, such as 2026-11-24.");
        _philosophy = Value("--philosophy", "NAME", "How much each criterion counts (default: balanced).");
        _to = Value("--to", "FILE", "Where the record goes; - is standard output. It holds the roster: keep it like one.");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules record --roster content/demo/club.csv --on 2026-11-24 --to -",
        "hinge-selector rules record --roster content/demo/club.csv --room content/demo/room.yaml --standing content/demo/standing.yaml --on 2026-11-24 --to -",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var roster = line.GetValue(_roster) ?? throw new UsageException("'rules record' needs a roster.", "Give '--roster FILE'.");
        var to = line.GetValue(_to) ?? throw new UsageException("'rules record' needs a place for the record.", "Give '--to FILE', or '--to -' for standard output.");
        // A record that depended on the day of its making could not be compared.
        var typed = line.GetValue(_on) ?? throw new UsageException("'rules record' needs the day of the decisions.", "Give '--on DATE', for example '--on 2026-11-24'.");
        if (!DateOnly.TryParseExact(typed, "yyyy-MM-dd", out var on))
            throw new UsageException($"'{typed}' is not a day.", "Write year-month-day, for example '--on 2026-11-24'.");
        var book = Home.Book(line, around);
        var philosophy = line.GetValue(_philosophy) ?? "balanced";
        if (!book.Philosophies.ContainsKey(philosophy))
            throw new UsageException($"There is no philosophy '{philosophy}'.", Slip.DidYouMeanOneOf(philosophy, [.. book.Philosophies.Keys]));
        var record = Decide(book, new SquadInput(on, philosophy, Read(roster, around)!, Read(line.GetValue(_room), around), Read(line.GetValue(_standing), around)));
        Write(record, to, around);
        return ExitCode.Done;
    }

    /// <summary>Decides for a squad.</summary>
    /// <exception cref="FaultyInputException">A file or a row is faulty.</exception>
    internal static SquadRecord Decide(RuleBook book, SquadInput input)
    {
        var bag = new DiagnosticBag();
        return new SquadDecider(book, EngineOfRecord.For(book)).Decide(input, bag) ?? throw new FaultyInputException(ExitCode.BadInput, bag.Sorted);
    }

    private static SquadFile? Read(string? path, Surroundings around)
        => path is null ? null : new SquadFile(path, TextFiles.Read(path, around).Text.ReplaceLineEndings("\n"));

    private static void Write(SquadRecord record, string to, Surroundings around)
    {
        if (to == StandardOutput)
        {
            SquadJson.Write(around.OutputStream, record);
            return;
        }
        using var bytes = new MemoryStream();
        SquadJson.Write(bytes, record);
        File.WriteAllBytes(Path.GetFullPath(to, around.WorkingFolder), bytes.ToArray());
        around.Output.WriteLine($"{record.Athletes.Count} athletes recorded in {to}.");
    }
}
