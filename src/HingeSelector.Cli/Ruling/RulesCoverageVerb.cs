using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Examples;
using HingeSelector.Examples.Covering;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules coverage</c>: what the examples show of each condition.</summary>
public sealed class RulesCoverageVerb : Verb
{
    private readonly Argument<string?> _rule = new("RULE-ID") { Description = "One rule (default: all).", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _topic;
    private readonly Option<string?> _format;

    /// <summary>Declares the options.</summary>
    public RulesCoverageVerb()
        : base("coverage", "Show which conditions no example shows met, not met or unknown, and which thresholds on one side only.")
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
        "hinge-selector rules coverage",
        "hinge-selector rules coverage --topic stops --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var json = OutputFormat.IsJson(line.GetValue(_format));
        var book = Home.Book(line, around);
        var report = CoverageReport.Of(book, RuleCases.Sound(book, RuleChoice.Of(book, line.GetValue(_rule), line.GetValue(_topic))));
        if (json)
            CoverageText.WriteJson(around.OutputStream, report);
        else
            around.PrintRows(CoverageText.Rows(report));
        return report.Missing.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }
}
