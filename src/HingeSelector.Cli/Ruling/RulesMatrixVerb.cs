using System.CommandLine;
using HingeSelector.Analysis;
using HingeSelector.Cli.Frame;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules matrix</c>: what the rules cover, and where they are silent.</summary>
public sealed class RulesMatrixVerb : Verb
{
    private readonly Option<bool> _rules;

    /// <summary>Declares the options.</summary>
    public RulesMatrixVerb()
        : base("matrix", "Show which rules can speak for and against each barbell variant, and the holes.")
        => _rules = Flag("--rules", "List the rules of each cell with file and line.");

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules matrix",
        "hinge-selector rules matrix --rules",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var matrix = new RuleMatrix(Home.Book(line, around));
        foreach (var row in RuleMatrixText.Rows(matrix, line.GetValue(_rules)))
            around.Output.WriteLine(row);
        return matrix.Holes.Any() ? ExitCode.Findings : ExitCode.Done;
    }
}
