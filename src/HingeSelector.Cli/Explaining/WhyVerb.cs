using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary><c>why</c>: every rule that holds for a variant; prints what <c>choose --why</c> prints.</summary>
public sealed class WhyVerb : ExplainVerb
{
    private readonly Argument<string[]> _variant;

    /// <summary>Declares the argument.</summary>
    public WhyVerb()
        : base("why", "Every rule that holds for a variant, the facts it read, and the sum of points.")
        => _variant = Words("VARIANT", "The variant, such as conventional.");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector why conventional --roster content/demo/club.csv --athlete p01 --on 2026-11-24",
        "hinge-selector why hex-high --roster content/demo/club.csv --athlete p01 --on 2026-11-24 --format json",
    ];

    /// <inheritdoc/>
    protected override void CheckArguments(ParseResult line, RuleBook book)
    {
        var names = line.GetValue(_variant) ?? [];
        if (names.Length != 1)
            throw new UsageException(names.Length == 0 ? "'why' needs a variant." : "'why' takes one variant.", "For example 'hinge-selector why conventional --screen FILE'.");
        VariantOf(book, names[0]);
    }

    /// <inheritdoc/>
    protected override Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var derivation = Derivation.Of(book, engine, question, VariantOf(book, line.GetValue(_variant)![0]));
        return new Told(answer, book, () => new DerivationText(book).Of(answer, derivation), json => json.Write(derivation));
    }
}
