using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Checking;

/// <summary>Conditions as a list of branches, each a list of leaves that must all hold.</summary>
public static class Branches
{
    // Beyond this many branches a pair is reported as not shown to be disjoint rather than expanded further.
    private const int MostBranches = 512;

    /// <summary>Whether no screen whatever can meet both lists of conditions, as far as intervals and sets show it.</summary>
    public static bool AreDisjoint(IReadOnlyList<Condition> a, IReadOnlyList<Condition> b, FactsBehind facts)
    {
        var left = Expand(a, facts, 2);
        var right = Expand(b, facts, 2);
        return left is not null && right is not null && left.TrueForAll(x => right.TrueForAll(y => Contradict([.. x, .. y])));
    }

    /// <summary>Whether some leaves of a branch cannot hold together.</summary>
    private static bool Contradict(List<Condition> leaves)
    {
        for (var i = 0; i < leaves.Count; i++)
        {
            for (var j = i + 1; j < leaves.Count; j++)
            {
                if (Contradict(leaves[i], leaves[j]))
                    return true;
            }
        }
        return false;
    }

    private static bool Contradict(Condition a, Condition b)
    {
        var (x, notX) = Strip(a);
        var (y, notY) = Strip(b);
        return (x, y) switch
        {
            (NumberCondition n, NumberCondition m) when n.Reading == m.Reading => notX == notY
                ? !notX && n.Interval.Intersect(m.Interval).IsEmpty
                : notX ? Within(m.Interval, n.Interval) : Within(n.Interval, m.Interval),
            (ValuesCondition v, ValuesCondition w) when v.Reading == w.Reading && v.Reading.Word.Kind == Words.WordKind.Choice
                => (Allowed(v, notX) & Allowed(w, notY)) == 0,
            (ValuesCondition v, ValuesCondition w) when v.Reading == w.Reading
                => v.Mask == w.Mask && (v.Wanted ^ notX) != (w.Wanted ^ notY),
            (FindingCondition f, FindingCondition g) when f.Finding == g.Finding => (f.Present ^ notX) != (g.Present ^ notY),
            _ => false,
        };
    }

    private static bool Within(Interval inner, Interval outer) => inner.Intersect(outer) == inner;

    private static ulong Allowed(ValuesCondition condition, bool negated)
    {
        var all = condition.Reading.Word.Values.Count == 64 ? ulong.MaxValue : (1UL << condition.Reading.Word.Values.Count) - 1;
        return condition.Wanted ^ negated ? condition.Mask : all & ~condition.Mask;
    }

    private static (Condition Leaf, bool Negated) Strip(Condition condition)
        => condition is NotCondition not ? (not.Part, true) : (condition, false);

    private static List<List<Condition>>? Expand(IEnumerable<Condition> conditions, FactsBehind facts, int findingDepth)
    {
        var branches = new List<List<Condition>> { new() };
        foreach (var condition in conditions)
        {
            if (ExpandOne(condition, false, facts, findingDepth) is not { } options || branches.Count * options.Count > MostBranches)
                return null;
            branches = [.. branches.SelectMany(b => options.Select(o => (List<Condition>)[.. b, .. o]))];
        }
        return branches;
    }

    private static List<List<Condition>>? ExpandOne(Condition condition, bool negated, FactsBehind facts, int findingDepth)
    {
        switch (condition)
        {
            case NotCondition not:
                return ExpandOne(not.Part, !negated, facts, findingDepth);
            case AllCondition all when !negated:
                return Expand(all.Parts, facts, findingDepth);
            case AnyCondition any when negated:
                return Product([.. any.Parts.Select(p => ExpandOne(p, true, facts, findingDepth))]);
            case AllCondition all:
                return Sum([.. all.Parts.Select(p => ExpandOne(p, true, facts, findingDepth))]);
            case AnyCondition any:
                return Sum([.. any.Parts.Select(p => ExpandOne(p, false, facts, findingDepth))]);
            case FindingCondition finding when finding.Present && !negated && findingDepth > 0:
                return ExpandFinding(finding, facts, findingDepth);
            default:
                return [[negated ? new NotCondition(condition, condition.Text, condition.Span) : condition]];
        }
    }

    // A finding that is present means that one of its rules holds.
    private static List<List<Condition>>? ExpandFinding(FindingCondition finding, FactsBehind facts, int findingDepth)
    {
        var options = Sum([.. facts.Concluding(finding.Finding).Select(r => Expand(r.OpenConditions, facts, findingDepth - 1))]);
        options?.ForEach(o => o.Add(finding));
        return options;
    }

    private static List<List<Condition>>? Sum(IReadOnlyList<List<List<Condition>>?> parts)
    {
        if (parts.Any(p => p is null) || parts.Sum(p => p!.Count) > MostBranches)
            return null;
        return [.. parts.SelectMany(p => p!)];
    }

    private static List<List<Condition>>? Product(IReadOnlyList<List<List<Condition>>?> parts)
    {
        var branches = new List<List<Condition>> { new() };
        foreach (var part in parts)
        {
            if (part is null || branches.Count * part.Count > MostBranches)
                return null;
            branches = [.. branches.SelectMany(b => part.Select(o => (List<Condition>)[.. b, .. o]))];
        }
        return branches;
    }
}
