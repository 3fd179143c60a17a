using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Examples;
using HingeSelector.Examples.Mutating;
using HingeSelector.Examples.Proposing;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules mutate</c>: changes each condition a little and looks whether an example notices.</summary>
public sealed class RulesMutateVerb : Verb
{
    private readonly Argument<string?> _rule = new("RULE-ID") { Description = "One rule (default: all).", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _topic;
    private readonly Option<string?> _format;

    /// <summary>Declares the options.</summary>
    public RulesMutateVerb()
        : base("mutate", "Change each condition a little and list what no example notices, with the example that is missing.")
    {
        Command.Arguments.Add(_rule);
        _topic = Value("--topic", "DIR", "The rules of one folder.");
        _format = Value("--format", "FORMAT", OutputFormat.Help);
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules mutate",
        "hinge-selector rules mutate hips-just-fit --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var json = OutputFormat.IsJson(line.GetValue(_format));
        var book = Home.Book(line, around);
        var rules = RuleCases.Sound(book, RuleChoice.Of(book, line.GetValue(_rule), line.GetValue(_topic)));
        var report = MutationReport.Of(book, rules);
        var alive = report.Survivors.Select(m => m.Rule.Index).ToHashSet();
        var proposer = new Proposer(book);
        var proposals = rules.Where(r => alive.Contains(r.Rule.Index)).SelectMany(proposer.For).Where(p => p.Kills.Count > 0).ToList();
        if (json)
            MutationText.WriteJson(around.OutputStream, report, proposals);
        else
            around.PrintRows(MutationText.Rows(report, proposals));
        return report.Survivors.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }
}
