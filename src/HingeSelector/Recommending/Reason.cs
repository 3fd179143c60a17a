namespace HingeSelector.Recommending;

/// <summary>A reason for or against a candidate.</summary>
/// <param name="Points">Points that the rule gives; negative speaks against.</param>
/// <param name="Criterion">Index of the criterion.</param>
/// <param name="Trace">The rule and the facts it read.</param>
public sealed record Reason(int Points, int Criterion, RuleTrace Trace);
