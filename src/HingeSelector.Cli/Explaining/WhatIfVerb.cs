using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary><c>what-if</c>: what would change in the answer if some facts were otherwise.</summary>
public sealed class WhatIfVerb : ExplainVerb
{
    private readonly Argument<string[]> _changes;

    /// <summary>Declares the argument.</summary>
    public WhatIfVerb()
        : base("what-if", "What would change in the answer if facts of the screen, the day or the room were otherwise.")
        => _changes = Words("FACT=VALUE", "One or more changes; with sides 'FACT left=VALUE', quoted.");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector what-if hinge-control=loses --roster content/demo/club.csv --athlete p01 --on 2026-11-24",
        "hinge-selector what-if hip-flexion.left=95deg hip-flexion.right=95deg --roster content/demo/club.csv --athlete p01 --on 2026-11-24",
        "hinge-selector what-if hex-bars=0 --roster content/demo/club.csv --athlete p01 --room content/demo/room.yaml --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    protected override void CheckArguments(ParseResult line, RuleBook book)
    {
        if (line.GetValue(_changes) is not { Length: > 0 })
            throw new UsageException("'what-if' needs a change.", "For example 'hinge-selector what-if hinge-control=keeps --screen FILE'.");
    }

    /// <inheritdoc/>
    protected override Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var bag = new DiagnosticBag();
        var whatIf = WhatIf.Ask(book, engine, question, line.GetValue(_changes)!, bag);
        return whatIf is null
            ? throw new FaultyInputException(ExitCode.Usage, bag.Sorted)
            : new Told(answer, book, () => new WhatIfText(book).Of(whatIf), json => json.Write(whatIf));
    }
}
