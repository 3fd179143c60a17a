using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples;

/// <summary>A condition as the author wrote it on one line: one word, or several words that share one demand.</summary>
/// <param name="Condition">The condition of the whole line.</param>
/// <param name="Leaves">One condition a word or finding.</param>
/// <param name="Above">The conditions that it stands in, outermost first, each with its place among their parts.</param>
public sealed record ConditionLine(Condition Condition, IReadOnlyList<Condition> Leaves, IReadOnlyList<(Condition Whole, int Place)> Above)
{
    private const string AnyOfGroup = "any ";

    /// <summary>The group of words that the line speaks of: <c>any pain-worst: above 5 points</c>; null for words named one by one.</summary>
    public string? Group => GroupOf(Condition);

    /// <summary>The group of words that a condition speaks of on one line; null for any other condition.</summary>
    public static string? GroupOf(Condition condition)
    {
        if (!IsOneLine(condition) || !condition.Text.StartsWith(AnyOfGroup, StringComparison.Ordinal))
            return null;
        var name = condition.Text[AnyOfGroup.Length..condition.Text.LastIndexOf(':')];
        return name.Contains(" or ", StringComparison.Ordinal) ? null : name;
    }

    /// <summary>Every line of a rule in the author's order.</summary>
    public static IReadOnlyList<ConditionLine> Of(Rule rule) => [.. rule.Conditions.SelectMany(c => Lines(c, []))];

    /// <summary>The ends of a condition: numbers, values and findings.</summary>
    public static IEnumerable<Condition> LeavesOf(Condition condition) => Parts(condition) is { } parts ? parts.SelectMany(LeavesOf) : [condition];

    /// <summary>Whether the parts stand on one line: <c>wrist-pain-worst, worse or elbow-pain-worst, worse: above 2 points</c>.</summary>
    public static bool IsOneLine(Condition condition) => condition is AnyCondition any && any.Parts.All(p => Parts(p) is null && p.Span == any.Span);

    /// <summary>The parts of a condition; null for one that has none.</summary>
    public static IReadOnlyList<Condition>? Parts(Condition condition) => condition switch
    {
        AnyCondition any => any.Parts,
        AllCondition all => all.Parts,
        NotCondition not => [not.Part],
        _ => null,
    };

    private static IEnumerable<ConditionLine> Lines(Condition condition, IReadOnlyList<(Condition, int)> above)
    {
        if (Parts(condition) is not { } parts)
            return [new ConditionLine(condition, [condition], above)];
        if (IsOneLine(condition))
            return [new ConditionLine(condition, parts, above)];
        return parts.SelectMany((p, i) => Lines(p, [.. above, (condition, i)]));
    }
}
