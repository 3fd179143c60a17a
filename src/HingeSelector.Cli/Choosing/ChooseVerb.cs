using System.CommandLine;
using HingeSelector.Cli.Frame;

namespace HingeSelector.Cli.Choosing;

/// <summary><c>choose</c>: the answer for one athlete or for a roster.</summary>
public sealed class ChooseVerb : Verb
{
    private readonly Option<string?> _screen;
    private readonly Option<string?> _roster;
    private readonly Option<string?> _athlete;
    private readonly Option<string?> _room;
    private readonly Option<string?> _standing;
    private readonly Option<string?> _on;
    private readonly Option<string?> _philosophy;
    private readonly Option<string?> _format;
    private readonly Option<string?> _top;
    private readonly Option<string?> _why;
    private readonly Option<bool> _exitLevel;

    /// <summary>Declares the options.</summary>
    public ChooseVerb()
        : base("choose", "Choose pull and set-up for one athlete or a whole roster, with reasons.")
    {
        _screen = Value("--screen", "FILE", "Screen of one athlete (YAML); - reads standard input.");
        _roster = Value("--roster", "FILE", "Athletes, one a row (CSV); - reads standard input.");
        _athlete = Value("--athlete", "ID", "One athlete of the roster, told in full.");
        _room = Value("--room", "FILE", "What the room has (YAML).");
        _standing = Value("--standing", "FILE", "What athletes pull in the present block (YAML).");
        _on = Value("--on", "DATE", "Day of the answer, such as 2026-11-24 (default: today).");
        _philosophy = Value("--philosophy", "NAME", "How much each criterion counts (default: balanced).");
        _format = Value("--format", "FORMAT", $"{string.Join(", ", ChooseRequest.Formats)} (default: table).");
        _top = Value("--top", "N", "How many candidates to tell in full (default: 3; json and csv: all).");
        _why = Value("--why", "VARIANT", "Every rule that holds for this variant, the facts it read, and the sum of points.");
        _exitLevel = Flag("--exit-level", "One athlete: tell the outcome in the exit code (10 to 13).");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector choose --roster content/demo/club.csv --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector choose --roster content/demo/club.csv --athlete p01 --standing content/demo/standing.yaml --on 2026-11-24",
        "hinge-selector choose --roster content/demo/club.csv --athlete p01 --on 2026-11-24 --why conventional",
        "hinge-selector choose --roster content/demo/club.csv --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var request = ChooseRequest.Read(
            new ChooseOptions(
                line.GetValue(_screen), line.GetValue(_roster), line.GetValue(_athlete), line.GetValue(_room), line.GetValue(_standing), line.GetValue(_on),
                line.GetValue(_philosophy), line.GetValue(_format), line.GetValue(_top), line.GetValue(_why), line.GetValue(_exitLevel)),
            around.Clock);
        EngineOfRecord.Prepare();
        return new ChooseRun(request, Home.Book(line, around), around).Run();
    }
}
