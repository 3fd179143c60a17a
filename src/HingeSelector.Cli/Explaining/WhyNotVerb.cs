using System.CommandLine;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary><c>why-not</c>: what keeps options from being the first choice.</summary>
public sealed class WhyNotVerb : ExplainVerb
{
    private readonly Argument<string[]> _variants;

    /// <summary>Declares the argument.</summary>
    public WhyNotVerb()
        : base("why-not", "Why an option is not the first choice: what takes it out, what it misses, which rule beats it.")
        => _variants = Words("VARIANT", "One or more variants; all when none is named.");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector why-not sumo --roster content/demo/club.csv --athlete p01 --on 2026-11-24",
        "hinge-selector why-not --roster content/demo/club.csv --athlete p01 --room content/demo/room.yaml --on 2026-11-24",
        "hinge-selector why-not --roster content/demo/club.csv --athlete p01 --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    protected override void CheckArguments(ParseResult line, RuleBook book)
    {
        foreach (var name in line.GetValue(_variants) ?? [])
            VariantOf(book, name);
    }

    /// <inheritdoc/>
    protected override Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var names = line.GetValue(_variants) ?? [];
        IReadOnlyList<WhyNotOption> options = [.. WhyNot.Of(book, engine, question, answer).Where(o => names.Length == 0 || names.Contains(o.Variant.Id))];
        return new Told(answer, book, () => WhyNotText.Of(answer, options), json => json.Write(options));
    }
}
