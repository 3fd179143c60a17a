using HingeSelector.Rules;

namespace HingeSelector.Examples.Mutating;

/// <summary>A rule with one changed condition.</summary>
/// <param name="Rule">The rule as written.</param>
/// <param name="Changed">The rule with the change.</param>
/// <param name="Mutation">The change.</param>
public sealed record Mutant(Rule Rule, Rule Changed, Mutation Mutation);
