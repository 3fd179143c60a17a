using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>An example with its fact tables filled, so that the rule and its mutants can be asked many times.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Example">The example.</param>
/// <param name="Athlete">Fact table of the athlete.</param>
/// <param name="Candidate">Fact table of the candidate; empty for a rule about the athlete.</param>
/// <param name="Findings">Findings by index.</param>
public sealed record ExampleCase(Rule Rule, RuleExample Example, FactValue[] Athlete, FactValue[] Candidate, Truth[] Findings)
{
    /// <summary>What conditions look at.</summary>
    public FactView View => new(Athlete, Candidate, Findings);

    /// <summary>What the rule does for it.</summary>
    public Truth Found => Decide(Rule);

    /// <summary>What the rule, or a mutant of it, does for it.</summary>
    public Truth Decide(Rule rule)
    {
        if (rule.PerCandidate && (rule.Variants & (1UL << Example.Variant!.Value)) == 0)
            return Truth.False;
        return LoopEvaluator.Holds(rule, View);
    }
}
