using System.CommandLine;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary><c>how-sure</c>: how often the first choice comes first when everything is off by its error.</summary>
public sealed class HowSureVerb : ExplainVerb
{
    /// <summary>Names the verb.</summary>
    public HowSureVerb()
        : base("how-sure", "How often the first choice comes first when measures, model and segments are off by their errors.")
    {
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector how-sure --roster content/demo/club.csv --athlete p01 --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector how-sure --roster content/demo/club.csv --athlete p01 --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    protected override Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var sure = HowSureCount.Count(book, question);
        return new Told(answer, book, () => HowSureText.Of(answer, sure), json => json.Write(sure));
    }
}
