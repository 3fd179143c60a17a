using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>One way in which a rule can hold: all of this together.</summary>
/// <param name="OfAthlete">Conditions on the athlete alone.</param>
/// <param name="OfCandidate">Conditions that look at the candidate.</param>
/// <param name="Marks">Codes of the marks that must be there.</param>
internal sealed record Branch(IReadOnlyList<Condition> OfAthlete, IReadOnlyList<Condition> OfCandidate, IReadOnlyList<int> Marks)
{
    /// <summary>A branch that asks nothing.</summary>
    public static Branch Always { get; } = new([], [], []);

    /// <summary>Both together.</summary>
    public Branch And(Branch other) => new(
        [.. OfAthlete.Concat(other.OfAthlete).Distinct()],
        [.. OfCandidate.Concat(other.OfCandidate).Distinct()],
        [.. Marks.Concat(other.Marks).Distinct().Order()]);
}
