using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Examples.Squads;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules replay</c>: decides a golden squad again and tells what differs.</summary>
public sealed class RulesReplayVerb : Verb
{
    private readonly Argument<string> _file = new("FILE") { Description = "A record that 'rules record' made." };
    private readonly Option<string?> _format;

    /// <summary>Declares the options.</summary>
    public RulesReplayVerb()
        : base("replay", "Decide a recorded squad again with the present rules and tell by athlete what differs (exit code 1).")
    {
        Command.Arguments.Add(_file);
        _format = Value("--format", "FORMAT", OutputFormat.Help);
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules replay tests/golden/squad/club.json",
        "hinge-selector rules replay tests/golden/squad/club.json --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var json = OutputFormat.IsJson(line.GetValue(_format));
        var before = Read(line.GetValue(_file)!, around);
        var book = Home.Book(line, around);
        if (!book.Philosophies.ContainsKey(before.Input.Philosophy))
            throw new UsageException($"The record was made with the philosophy '{before.Input.Philosophy}', which is gone.", Slip.DidYouMeanOneOf(before.Input.Philosophy, [.. book.Philosophies.Keys]));
        var after = RulesRecordVerb.Decide(book, before.Input);
        var changes = SquadComparison.Of(before, after);
        if (json)
            SquadText.WriteJson(around.OutputStream, before, after, changes);
        else
            around.PrintRows(SquadText.Rows(before, after, changes));
        return changes.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }

    private static SquadRecord Read(string path, Surroundings around)
    {
        var source = TextFiles.Read(path, around);
        try
        {
            return SquadJson.Read(source.Text);
        }
        catch (FormatException fault)
        {
            throw new FaultyInputException(ExitCode.BadInput, [Problems.CannotOpen(path, fault.Message)]);
        }
    }
}
