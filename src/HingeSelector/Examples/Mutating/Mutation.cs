using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples.Mutating;

/// <summary>A changed condition.</summary>
/// <param name="Kind">What was done.</param>
/// <param name="Condition">The changed condition; null when it was left out.</param>
/// <param name="At">The piece that was changed, as the author wrote it.</param>
/// <param name="Says">What stands there instead, in words.</param>
public sealed record Mutation(MutationKind Kind, Condition? Condition, Condition At, string Says);
