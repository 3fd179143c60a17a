using System.CommandLine;
using System.CommandLine.Invocation;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Frame;

/// <summary>Prints the help of a command: purpose, how to call it, examples, options, exit codes.</summary>
internal sealed class HelpPage(Surroundings around, IReadOnlyList<Verb> verbs) : SynchronousCommandLineAction
{
    private const int Width = 100;
    private const int NameColumn = 22;
    private const int CodeColumn = 5;
    private const int MostExamples = 4;

    private static readonly (string Code, string Meaning)[] _codes =
    [
        ("0", "done; every athlete got an answer, stops and holds included"),
        ("1", "ran, and found something: a hole, a warning, an example that fails or is missing, a difference"),
        ("2", "the command line was not understood; nothing on standard output"),
        ("3", "a screen, roster, room or standing file is faulty"),
        ("4", "a file of the rules folder is faulty"),
        ("70", "a fault of the program itself"),
    ];

    private static readonly (string Code, string Meaning)[] _levelCodes = [("10-13", "with --exit-level: limited today (10), held (11), refer (12), emergency (13)")];

    private static readonly (string Code, string Meaning)[] _goneCodes = [("20", "a stop or a hold disappears that nobody has acknowledged (--acknowledge)")];

    public override bool Terminating => true;

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        foreach (var line in Of(parseResult.CommandResult.Command))
            around.Output.WriteLine(line);
        return ExitCode.Done;
    }

    /// <summary>The lines of the help of a command.</summary>
    private List<string> Of(Command command)
    {
        var own = verbs.FirstOrDefault(v => v.Command == command);
        var lines = new List<string> { command.Description ?? "", "", "Use:", "  " + CallOf(command), "" };
        AddCommands(lines, command);
        AddExamples(lines, command, own);
        foreach (var argument in command.Arguments)
            AddPair(lines, argument.Name, argument.Description ?? "", NameColumn);
        if (command.Arguments.Count > 0)
            lines.Add("");
        AddOptions(lines, "Options:", own is null ? [] : [.. command.Options]);
        AddOptions(lines, "Options of every command:", [.. command.Options.Where(_ => own is null), .. command.Parents.OfType<Command>().SelectMany(p => p.Options).Where(o => o.Recursive)]);
        lines.Add("Exit codes:");
        foreach (var (code, meaning) in _codes.Concat(command.Options.Any(o => o.Name == "--exit-level") ? _levelCodes : []).Concat(command.Options.Any(o => o.Name == "--acknowledge") ? _goneCodes : []))
            AddPair(lines, code, meaning, CodeColumn);
        return lines;
    }

    private static string CallOf(Command command)
    {
        var path = string.Join(' ', command.Parents.OfType<Command>().Reverse().Select(c => c.Name).Append(command.Name));
        return path + string.Concat(command.Arguments.Select(CallOf)) + (command.Subcommands.Count > 0 ? " COMMAND [options]" : " [options]");
    }

    private static string CallOf(Argument argument) => argument.Arity.MinimumNumberOfValues == 0 ? $" [{argument.Name}]" : $" {argument.Name}";

    private static void AddCommands(List<string> lines, Command command)
    {
        if (command.Subcommands.Count == 0)
            return;
        lines.Add("Commands:");
        // The first page shows a group as one line; its own page lists it.
        foreach (var sub in command.Subcommands)
            AddPair(lines, sub.Subcommands.Count > 0 ? $"{sub.Name} COMMAND" : sub.Name, sub.Description + (sub.Subcommands.Count > 0 ? $" '{sub.Name} --help' lists {sub.Subcommands.Count}." : ""), NameColumn);
        lines.Add("");
    }

    // Each verb shows its own examples; the pages above show how a line looks.
    private IEnumerable<Verb> Shown(Command command)
        => command is RootCommand ? verbs.DistinctBy(v => v.Group ?? v.Command.Name) : verbs.Where(v => v.Group == command.Name);

    private void AddExamples(List<string> lines, Command command, Verb? own)
    {
        var examples = own is not null ? own.Examples : [.. Shown(command).Select(v => v.Examples[0]).Take(MostExamples)];
        lines.Add("Examples:");
        lines.AddRange(examples.Select(e => "  " + e));
        lines.Add("");
    }

    private static void AddOptions(List<string> lines, string title, IReadOnlyList<Option> options)
    {
        if (options.Count == 0)
            return;
        lines.Add(title);
        foreach (var option in options)
            AddPair(lines, string.Join(", ", new[] { option.Name }.Concat(option.Aliases.Order(StringComparer.Ordinal))) + (option.HelpName is { } name ? " " + name : ""), option.Description ?? "", NameColumn);
        lines.Add("");
    }

    private static void AddPair(List<string> lines, string name, string text, int column)
    {
        var wrapped = PlainText.Wrap(text, Width - column - 4);
        for (var i = 0; i < wrapped.Count; i++)
            lines.Add($"  {(i == 0 ? name : "").PadRight(column)}  {wrapped[i]}");
    }
}
