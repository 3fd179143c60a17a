using System.CommandLine;
using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Frame;
using HingeSelector.Comparing;
using HingeSelector.Diagnostics;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Comparing;

/// <summary><c>philosophy compare</c>: who of a roster would change between two philosophies.</summary>
public sealed class PhilosophyCompareVerb : Verb
{
    private readonly Argument<string> _from;
    private readonly Argument<string> _to;
    private readonly SquadOptions.Declared _squad;

    /// <summary>Declares arguments and options.</summary>
    public PhilosophyCompareVerb()
        : base("compare", "Who of a roster changes between two philosophies: first choice, order, points, cues.")
    {
        _from = new Argument<string>("A") { Description = "The philosophy to start from." };
        _to = new Argument<string>("B") { Description = "The philosophy to compare it with." };
        Command.Arguments.Add(_from);
        Command.Arguments.Add(_to);
        _squad = SquadOptions.Declare(Value);
    }

    /// <inheritdoc/>
    public override string Group => "philosophy";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector philosophy compare balanced strength-first --roster content/demo/club.csv --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector philosophy compare carry-over-first strength-first --roster content/demo/club.csv --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var options = SquadOptions.Read(line, _squad, "philosophy compare", around.Clock);
        var book = Home.Book(line, around);
        var (from, to) = (Philosophies.Named(book, line.GetValue(_from)!), Philosophies.Named(book, line.GetValue(_to)!));
        if (from.Id == to.Id)
            throw new UsageException($"'{from.Id}' is named twice.", $"Name two of: {string.Join(", ", book.Philosophies.Keys.Order(StringComparer.Ordinal))}.");
        var files = new SquadFiles(options, around);
        var first = files.Side(book, null, null, from.Id);
        var comparison = PhilosophyComparison.Of(book, (from, first), (to, files.Side(book, first.Squad, null, to.Id)));
        around.Error.Write(DiagnosticPrinter.Print(files.Diagnostics));
        if (options.AsJson)
            JsonPhilosophyComparison.Write(around.OutputStream, comparison, options.On);
        else
            new LinePrinter(around, false).Print(PhilosophyComparisonText.Of(comparison));
        return files.BadRows > 0 ? ExitCode.BadInput : ExitCode.Done;
    }
}
