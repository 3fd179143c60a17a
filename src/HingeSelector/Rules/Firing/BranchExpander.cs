using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Conditions as branches: findings become marks, everything else stays a condition that is asked as a whole.</summary>
/// <remarks>
/// In three-valued logic with least and greatest as "and" and "or", a condition holds for certain exactly when one of its branches
/// does, and fails for certain exactly when a branch of its negation does. So nothing here assumes what is not proven.
/// </remarks>
internal static class BranchExpander
{
    /// <summary>More branches than this in one rule are refused: nobody can oversee such a rule.</summary>
    public const int Most = 256;

    /// <summary>Branches of conditions that must all hold.</summary>
    public static IReadOnlyList<Branch> All(IEnumerable<Condition> conditions)
        => Product(conditions.Select(c => Expand(c, false)));

    /// <summary>Branches in which at least one of the conditions fails for certain.</summary>
    public static IReadOnlyList<Branch> NotAll(IEnumerable<Condition> conditions)
        => [.. conditions.SelectMany(c => Expand(c, true))];

    private static IReadOnlyList<Branch> Expand(Condition condition, bool negated)
    {
        switch (condition)
        {
            case NotCondition not:
                return Expand(not.Part, !negated);
            case AllCondition all when !negated:
                return Product(all.Parts.Select(p => Expand(p, false)));
            case AnyCondition any when negated:
                return Product(any.Parts.Select(p => Expand(p, true)));
            case FindingCondition finding:
                return [new Branch([], [], [finding.Present != negated ? MarkCodes.Present(finding.Finding) : MarkCodes.Absent(finding.Finding)])];
            case AllCondition all when all.Findings.Any():
                return [.. all.Parts.SelectMany(p => Expand(p, true))];
            case AnyCondition any when any.Findings.Any():
                return [.. any.Parts.SelectMany(p => Expand(p, false))];
            default:
                return [Leaf(negated ? new NotCondition(condition, "not " + condition.Text, condition.Span) : condition)];
        }
    }

    private static Branch Leaf(Condition condition)
        => condition.Reads.Any(r => r.Word.OfCandidate) ? new([], [condition], []) : new([condition], [], []);

    private static IReadOnlyList<Branch> Product(IEnumerable<IReadOnlyList<Branch>> factors)
    {
        IReadOnlyList<Branch> product = [Branch.Always];
        foreach (var factor in factors)
        {
            if (product.Count * factor.Count > Most)
                throw new NetworkException($"A rule has more than {Most} branches of findings; split it.");
            product = [.. product.SelectMany(a => factor.Select(a.And))];
        }
        return product;
    }
}
