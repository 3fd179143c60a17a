using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples;

/// <summary>What came of an example inside a rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Example">The example.</param>
/// <param name="Case">Its fact tables; null when the given facts could not be read.</param>
/// <param name="WrongReason">What the reason is where the author names another; null when it is the named one or none is named.</param>
public sealed record ExampleResult(Rule Rule, RuleExample Example, ExampleCase? Case, string? WrongReason)
{
    /// <summary>What the rule does for it; null when the given facts could not be read.</summary>
    public Truth? Found { get; } = Case?.Found;

    /// <summary>Whether it came out as its author expects, and for the named reason.</summary>
    public bool Agrees => Found == Example.Expect && WrongReason is null;
}
