using System.CommandLine;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary><c>turning-points</c>: at which value of a single fact the first choice changes.</summary>
public sealed class TurningPointsVerb : ExplainVerb
{
    /// <summary>Names the verb.</summary>
    public TurningPointsVerb()
        : base("turning-points", "For each single measured fact: the nearest value at which the first choice changes.")
    {
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector turning-points --roster content/demo/club.csv --athlete p01 --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector turning-points --roster content/demo/club.csv --athlete p01 --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    protected override Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var points = TurningPointFinder.Find(book, question);
        return new Told(answer, book, () => new TurningPointsText(book).Of(answer, points), json => json.Write(points));
    }
}
