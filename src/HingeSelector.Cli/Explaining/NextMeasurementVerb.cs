using System.CommandLine;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary><c>next-measurement</c>: what to measure next.</summary>
public sealed class NextMeasurementVerb : ExplainVerb
{
    /// <summary>Names the verb.</summary>
    public NextMeasurementVerb()
        : base("next-measurement", "What to measure next: the chance that it changes the first choice, against its minutes.")
    {
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector next-measurement --roster content/demo/club.csv --athlete p01 --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector next-measurement --roster content/demo/club.csv --athlete p01 --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    protected override Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var next = NextMeasurementFinder.Find(book, question);
        return new Told(answer, book, () => NextMeasurementText.Of(answer, next), json => json.Write(next));
    }
}
