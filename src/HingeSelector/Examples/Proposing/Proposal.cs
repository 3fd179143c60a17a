using HingeSelector.Examples.Covering;
using HingeSelector.Examples.Mutating;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples.Proposing;

/// <summary>An example that is missing, as a change against one that is there.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Fired">The example that fires, below which it belongs.</param>
/// <param name="Key">The key under which it belongs: also with, not with, open with, open without, also for, not for.</param>
/// <param name="Item">The item as an author writes it.</param>
/// <param name="Expect">What the rule does for it.</param>
/// <param name="Shows">What of the coverage it would show.</param>
/// <param name="Kills">Mutants that it would notice.</param>
public sealed record Proposal(Rule Rule, RuleExample Fired, string Key, string Item, Truth Expect, IReadOnlyList<CoverageItem> Shows, IReadOnlyList<Mutant> Kills);
