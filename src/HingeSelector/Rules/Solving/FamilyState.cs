using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Solving;

/// <summary>One way in which the words of a family may stand.</summary>
/// <param name="Given">The answers that bring it about; empty when nothing is known.</param>
/// <param name="Truths">How each condition of the family comes out.</param>
/// <param name="Complete">Whether every word is known and applies.</param>
/// <param name="Tag">A mark by which links tell states apart: a place in a list, -1 for none, -2 for not applicable.</param>
internal sealed record FamilyState(IReadOnlyList<GivenWord> Given, Truth[] Truths, bool Complete, int Tag);
