using HingeSelector.Rules;

namespace HingeSelector.Recommending;

/// <summary>A rule that took part in an answer, with the facts that it read.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Facts">What it read.</param>
public sealed record RuleTrace(Rule Rule, IReadOnlyList<FactRead> Facts);
