using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Explaining;

/// <summary>A rule that holds, condition by condition.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Conditions">Each condition as written, with the facts that made it hold.</param>
public sealed record DerivedRule(Rule Rule, IReadOnlyList<(string Condition, IReadOnlyList<FactRead> Facts)> Conditions);
