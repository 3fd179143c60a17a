using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Conditions of a rule that finds, as branches: findings become marks, everything else stays a condition that is asked as a whole.</summary>
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
    public static IReadOnlyList<Branch> NotAll(IEnumerable<Condition> conditions) => AnyOf([.. conditions], negated: true);

    private static IReadOnlyList<Branch> Expand(Condition condition, bool negated)
    {
        switch (condition)
        {
            case NotCondition not:
                return Expand(not.Part, !negated);
            case FindingCondition finding:
                return [new Branch([], [finding.Present != negated ? MarkCodes.Present(finding.Finding) : MarkCodes.Absent(finding.Finding)])];
            case AllCondition all when all.Findings.Any():
                return negated ? AnyOf(all.Parts, true) : Product(all.Parts.Select(p => Expand(p, false)));
            case AnyCondition any when any.Findings.Any():
                return negated ? Product(any.Parts.Select(p => Expand(p, true))) : AnyOf(any.Parts, false);
            default:
                return [Leaf(condition, negated)];
        }
    }

    // What reads no finding is asked in one branch, however many parts it has.
    private static IReadOnlyList<Branch> AnyOf(IReadOnlyList<Condition> parts, bool negated)
    {
        var plain = parts.Where(p => !p.Findings.Any()).ToList();
        IReadOnlyList<Branch> together = plain switch
        {
            [] => [],
            [var one] => [Leaf(one, negated)],
            _ when negated => [Leaf(new AllCondition(plain, Texts(plain, " and "), plain[0].Span), true)],
            _ => [Leaf(new AnyCondition(plain, Texts(plain, " or "), plain[0].Span), false)],
        };
        return [.. together, .. parts.Where(p => p.Findings.Any()).SelectMany(p => Expand(p, negated))];
    }

    private static Branch Leaf(Condition condition, bool negated)
        => new([negated ? new NotCondition(condition, "not " + condition.Text, condition.Span) : condition], []);

    private static string Texts(IEnumerable<Condition> parts, string between) => string.Join(between, parts.Select(p => p.Text));

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
