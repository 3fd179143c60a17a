using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>One way in which a rule can hold: all of this together.</summary>
/// <param name="Conditions">Conditions that are asked of the subject.</param>
/// <param name="Marks">Codes of the marks that must be there.</param>
internal sealed record Branch(IReadOnlyList<Condition> Conditions, IReadOnlyList<int> Marks)
{
    /// <summary>A branch that asks nothing.</summary>
    public static Branch Always { get; } = new([], []);

    /// <summary>Both together.</summary>
    public Branch And(Branch other) => new([.. Conditions.Concat(other.Conditions).Distinct()], [.. Marks.Concat(other.Marks).Distinct().Order()]);
}
