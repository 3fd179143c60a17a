using System.CommandLine;
using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Frame;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules watch</c>: the ranking of one athlete, told anew at every save.</summary>
public sealed class RulesWatchVerb : Verb
{
    private readonly Option<string?> _screen;
    private readonly Option<string?> _roster;
    private readonly Option<string?> _athlete;
    private readonly Option<string?> _room;
    private readonly Option<string?> _standing;
    private readonly Option<string?> _on;
    private readonly Option<string?> _philosophy;

    /// <summary>Declares the options.</summary>
    public RulesWatchVerb()
        : base("watch", "Tell the ranking of one athlete anew at every save; Ctrl+C ends it.")
    {
        _screen = Value("--screen", "FILE", "Screen of one athlete (YAML).");
        _roster = Value("--roster", "FILE", "Athletes, one a row (CSV). Needs --athlete.");
        _athlete = Value("--athlete", "ID", "One athlete of the roster.");
        _room = Value("--room", "FILE", "What the room has (YAML).");
        _standing = Value("--standing", "FILE", "What athletes pull in the present block (YAML).");
        _on = Value("--on", "DATE", "Day of the answer, such as 2026-11-24 (default: today).");
        _philosophy = Value("--philosophy", "NAME", "How much each criterion counts (default: balanced).");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules watch --roster content/demo/club.csv --athlete p01 --on 2026-11-24",
        "hinge-selector rules watch --roster content/demo/club.csv --athlete p01 --room content/demo/room.yaml --on 2026-11-24",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var (screen, roster, athlete) = (line.GetValue(_screen), line.GetValue(_roster), line.GetValue(_athlete));
        if (screen is null && (roster is null || athlete is null))
            throw new UsageException("'rules watch' needs one athlete.", "Give '--screen FILE', or '--roster FILE' with '--athlete ID'.");
        if (new[] { screen, roster, line.GetValue(_room), line.GetValue(_standing) }.Contains("-"))
            throw new UsageException("'rules watch' reads its files again and again; standard input can be read once.", "Name a file instead of '-'.");
        var request = ChooseRequest.Read(new ChooseOptions(screen, roster, athlete, line.GetValue(_room), line.GetValue(_standing), line.GetValue(_on), line.GetValue(_philosophy), null, null, null, false), around.Clock);
        return new WatchRun(request, () => Home.Files(line, around), Home.RulesFolder(line, around), around).Run();
    }
}
