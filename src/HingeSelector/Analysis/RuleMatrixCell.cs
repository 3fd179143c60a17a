using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>What the rules can say of one variant by one criterion.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Variant">The variant.</param>
/// <param name="For">Rules that can speak for it.</param>
/// <param name="Against">Rules that can speak against it.</param>
public sealed record RuleMatrixCell(Criterion Criterion, Variant Variant, IReadOnlyList<Rule> For, IReadOnlyList<Rule> Against)
{
    /// <summary>Whether evidence on one of the rules points both ways or against.</summary>
    public bool IsDisputed => For.Concat(Against).Any(r => r.Disputed);

    /// <summary>What is missing; null when nothing is.</summary>
    public string? Hole => (For.Count, Against.Count) switch
    {
        (0, 0) => "no rule speaks",
        (0, _) when IsDisputed => "disputed, and no rule can speak for it",
        (_, 0) when IsDisputed => "disputed, and no rule can speak against it",
        _ => null,
    };
}
