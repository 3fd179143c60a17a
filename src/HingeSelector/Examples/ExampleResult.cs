using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples;

/// <summary>What came of an example inside a rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Example">The example.</param>
/// <param name="Found">What the rule does for it; null when the given facts could not be read.</param>
/// <param name="Why">The condition that decided it, with the values that it read.</param>
public sealed record ExampleResult(Rule Rule, RuleExample Example, Truth? Found, string Why)
{
    /// <summary>Whether it came out as its author expects.</summary>
    public bool Agrees => Found == Example.Expect;
}
