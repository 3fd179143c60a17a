namespace HingeSelector.Rules.Firing;

/// <summary>A rule that holds when its definition does.</summary>
/// <param name="Rule">Index of the rule.</param>
/// <param name="Variants">Variants that it can hold for, one bit each; 0 when it concludes about the athlete.</param>
internal sealed record Concluded(int Rule, ulong Variants);
