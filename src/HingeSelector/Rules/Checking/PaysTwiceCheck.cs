using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Solving;
using HingeSelector.Words;

namespace HingeSelector.Rules.Checking;

/// <summary>HS3006: no fact may pay twice within a criterion.</summary>
/// <remarks>
/// Two points rules of one criterion that can both hold for the same candidate may not rest on the same measured or computed word,
/// be it directly or through findings. Whether both can hold is decided on their conditions as intervals and sets.
/// </remarks>
public static class PaysTwiceCheck
{
    /// <summary>Compares every pair of points rules of one criterion.</summary>
    /// <param name="vocabulary">Every word.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="variants">The variants.</param>
    /// <param name="criteria">The criteria.</param>
    /// <param name="bag">Collects faults.</param>
    /// <param name="touched">Only pairs with such a rule are compared; null compares all.</param>
    public static void Run(Vocabulary vocabulary, IReadOnlyList<Rule> rules, IReadOnlyList<Variant> variants, IReadOnlyList<Criterion> criteria, DiagnosticBag bag, Func<Rule, bool>? touched = null)
    {
        var facts = new FactsBehind(rules);
        // The quick comparison settles nearly every pair; what it cannot settle is decided exactly.
        var exact = new Lazy<RuleSpace>(() => new RuleSpace(vocabulary, variants, rules));
        foreach (var criterion in criteria)
        {
            var paying = rules.Where(r => r.Conclusions.OfType<PointsConclusion>().Any(p => p.Criterion == criterion.Index)).ToList();
            for (var i = 0; i < paying.Count; i++)
            {
                for (var j = i + 1; j < paying.Count; j++)
                {
                    if (touched is null || touched(paying[j]))
                        ComparePair(paying[i], paying[j], facts, exact, variants, criterion, bag);
                    else if (touched(paying[i]))
                        ComparePair(paying[j], paying[i], facts, exact, variants, criterion, bag);
                }
            }
        }
    }

    private static void ComparePair(Rule a, Rule b, FactsBehind facts, Lazy<RuleSpace> exact, IReadOnlyList<Variant> variants, Criterion criterion, DiagnosticBag bag)
    {
        var both = a.Variants & b.Variants;
        if (both == 0)
            return;
        var shared = facts.Of(a).Intersect(facts.Of(b)).Order(StringComparer.Ordinal).FirstOrDefault();
        if (shared is null || Branches.AreDisjoint(a.Conditions, b.Conditions, facts))
            return;
        if (!CanBothHold(a, b, exact.Value, out var together))
            return;
        var variant = variants[together ?? System.Numerics.BitOperations.TrailingZeroCount(both)];
        bag.Add(Problems.PaysTwice(b.Change?.Span ?? b.Span, b.Id, a.Id, shared, criterion.Id, variant.Id));
    }

    // A search that was given up has shown nothing, so the pair is told.
    private static bool CanBothHold(Rule a, Rule b, RuleSpace space, out int? variant)
    {
        variant = null;
        try
        {
            var witness = new Solver(space).Find(new Goal(space.Of(a), Need.True), new Goal(space.Of(b), Need.True));
            variant = witness?.Variant;
            return witness is not null;
        }
        catch (SearchGivenUpException)
        {
            return true;
        }
    }
}
