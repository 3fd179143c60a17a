using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples;

/// <summary>A condition in an example: whether it holds, and how far each value is from turning it.</summary>
/// <param name="Condition">The condition.</param>
/// <param name="Truth">Whether it holds.</param>
/// <param name="Values">What it read, with distances.</param>
public sealed record LineState(Condition Condition, Truth Truth, IReadOnlyList<ValueRead> Values)
{
    private const int MostValues = 4;

    /// <summary>Every condition of the rule in the author's order.</summary>
    public static IReadOnlyList<LineState> All(ExampleCase one)
        => [.. one.Rule.Conditions.Select(c => new LineState(c, c.Evaluate(one.View), [.. ValueRead.Of(c, one.View)]))];

    /// <summary>The conditions that decide what the rule does: those that fail; with none, those that are open; with none of either, all.</summary>
    public static IEnumerable<LineState> Deciding(ExampleCase one) => All(one).Where(l => l.Truth == one.Found);

    /// <summary>The conditions that decide what the rule does.</summary>
    public static IEnumerable<Condition> DecidingConditions(ExampleCase one) => one.Rule.Conditions.Where(c => c.Evaluate(one.View) == one.Found);

    /// <inheritdoc/>
    public override string ToString() => $"{Condition.Text} {ExampleText.SayOfCondition(Truth)} ({string.Join(", ", Values.Take(MostValues))}{(Values.Count > MostValues ? $" and {Values.Count - MostValues} more" : "")})";
}
