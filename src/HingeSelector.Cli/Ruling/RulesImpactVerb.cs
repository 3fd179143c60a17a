using System.CommandLine;
using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Comparing;
using HingeSelector.Cli.Frame;
using HingeSelector.Comparing;
using HingeSelector.Diagnostics;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules impact</c>: who of a roster changes between two versions of the rules, because of which edited line.</summary>
public sealed class RulesImpactVerb : Verb
{
    private readonly Option<string?> _from;
    private readonly Option<string?> _to;
    private readonly Option<string?> _philosophy;
    private readonly Option<string[]> _acknowledge;
    private readonly SquadOptions.Declared _squad;

    /// <summary>Declares the options.</summary>
    public RulesImpactVerb()
        : base("impact", "Who of a roster changes between two versions of the rules, because of which edited line.")
    {
        _from = Value("--from", "VERSION", "The rules before: a folder, or a git revision such as HEAD.");
        _to = Value("--to", "VERSION", "The rules after (default: those in use).");
        _squad = SquadOptions.Declare(Value);
        _philosophy = Value("--philosophy", "NAME", "What counts how much (default: the one of record in --standing, else balanced).");
        _acknowledge = new Option<string[]>("--acknowledge") { Description = "A stop rule (or the word of a question) that may disappear; may be given again.", HelpName = "RULE-ID" };
        Command.Options.Add(_acknowledge);
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules impact --from rules --roster content/demo/club.csv --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector rules impact --from . --to rules --roster content/demo/club.csv --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var options = SquadOptions.Read(line, _squad, "rules impact", around.Clock);
        var typed = line.GetValue(_from) ?? throw new UsageException("'rules impact' needs the rules before.", "Give '--from FOLDER' or '--from HEAD'.");
        var home = Home.Folder(line.GetValue(GlobalOptions.Home), around);
        var from = RulesVersion.Read(RulesVersion.Files(typed, home, around));
        var to = RulesVersion.Read(line.GetValue(_to) is { } other ? RulesVersion.Files(other, home, around) : Home.Files(line, around));
        var philosophy = line.GetValue(_philosophy);
        foreach (var book in new[] { from.Book, to.Book })
            Philosophies.Named(book, philosophy ?? Philosophies.Default);
        var files = new SquadFiles(options, around);
        var impact = Impact.Of(
            (from.Version, to.Version),
            (from.Book, to.Book),
            (book, squad) => ReferenceEquals(book, from.Book) ? files.Side(book, squad, to.Book.Vocabulary, philosophy)
                : ReferenceEquals(book, to.Book) ? files.Side(book, squad, from.Book.Vocabulary, philosophy)
                : files.Trial(book, squad, to.Book.Vocabulary, philosophy),
            (line.GetValue(_acknowledge) ?? []).ToHashSet(StringComparer.Ordinal));
        around.Error.Write(DiagnosticPrinter.Print(files.Diagnostics));
        if (options.AsJson)
            JsonImpact.Write(around.OutputStream, impact, from.Book, to.Book, options.On);
        else
            new LinePrinter(around, false).Print(ImpactText.Of(impact, to.Book));
        return impact.Fails ? ExitCode.StopGone : files.BadRows > 0 ? ExitCode.BadInput : ExitCode.Done;
    }
}
