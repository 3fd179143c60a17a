using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Examples.Proposing;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules try</c>: runs the examples inside the rules, or proposes those that are missing.</summary>
public sealed class RulesTryVerb : Verb
{
    private readonly Argument<string?> _rule = new("RULE-ID") { Description = "One rule (default: all).", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _topic;
    private readonly Option<string?> _format;
    private readonly Option<bool> _propose;
    private readonly Option<bool> _write;

    /// <summary>Declares the options.</summary>
    public RulesTryVerb()
        : base("try", "Run the examples inside the rules; propose those that are missing.")
    {
        Command.Arguments.Add(_rule);
        _topic = Value("--topic", "DIR", "The rules of one folder.");
        _format = Value("--format", "FORMAT", OutputFormat.Help);
        _propose = Flag("--propose", "Print the missing examples as YAML: both sides of each threshold, each condition met, not met and unknown.");
        _write = Flag("--write", "With --propose: write them into the rule files; comments and order stay.");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules try",
        "hinge-selector rules try hips-just-fit",
        "hinge-selector rules try --topic fit --format json",
        "hinge-selector rules try --topic fit --propose",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var json = OutputFormat.IsJson(line.GetValue(_format));
        if (line.GetValue(_write) && !line.GetValue(_propose))
            throw new UsageException("'--write' writes proposals.", "Add '--propose'.");
        var book = Home.Book(line, around);
        var rules = RuleChoice.Of(book, line.GetValue(_rule), line.GetValue(_topic));
        return line.GetValue(_propose) ? Propose(line, around, book, rules, json) : Try(around, book, rules, json);
    }

    private static int Try(Surroundings around, RuleBook book, IReadOnlyList<Rule> rules, bool json)
    {
        var bag = new DiagnosticBag();
        var results = new ExampleRunner(book).Run(rules, bag);
        if (results.Any(r => r.Case is null))
            throw new FaultyInputException(ExitCode.BadRules, bag.Sorted);
        if (json)
            new TriesJson(book).Write(around.OutputStream, results);
        else
            around.PrintRows(new TriesText(book).Rows(results));
        return results.All(r => r.Agrees) ? ExitCode.Done : ExitCode.Findings;
    }

    private int Propose(ParseResult line, Surroundings around, RuleBook book, IReadOnlyList<Rule> rules, bool json)
    {
        var proposer = new Proposer(book);
        var proposals = RuleCases.Sound(book, rules).SelectMany(proposer.For).ToList();
        if (line.GetValue(_write))
            return Write(line, around, proposals);
        if (json)
            ProposalText.WriteJson(around.OutputStream, proposals);
        else
            around.PrintRows([.. ProposalText.Rows(proposals), $"{proposals.Count} examples are missing."]);
        return proposals.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }

    // Read again before anything is written: a file that would not read, or an example that would not come out, stays out.
    private static int Write(ParseResult line, Surroundings around, List<Proposal> proposals)
    {
        var files = Home.Files(line, around);
        var folder = Path.Combine(Home.Folder(line.GetValue(GlobalOptions.Home), around), "rules");
        var skipped = 0;
        foreach (var file in proposals.GroupBy(p => p.Fired.At.Span.Source!.Path[(files.Name.Length + 1)..], StringComparer.Ordinal))
        {
            files = files.With(file.Key, TriesEdit.Apply(files.Texts[file.Key], file, out var left));
            skipped += left.Count;
        }
        _ = RuleCases.Sound(RuleBookReader.Read(files));
        foreach (var path in proposals.Select(p => p.Fired.At.Span.Source!.Path[(files.Name.Length + 1)..]).Distinct(StringComparer.Ordinal))
            File.WriteAllText(Path.Combine(folder, path), files.Texts[path]);
        around.Output.WriteLine($"{proposals.Count - skipped} examples written.{(skipped > 0 ? $" {skipped} belong to an example that stands in brackets on one line; write it with one key a line." : "")}");
        return skipped > 0 ? ExitCode.Findings : ExitCode.Done;
    }
}
