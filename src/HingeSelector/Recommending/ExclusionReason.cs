namespace HingeSelector.Recommending;

/// <summary>Why a variant is out.</summary>
/// <param name="Why">The reason for people.</param>
/// <param name="Trace">The rule behind it.</param>
public sealed record ExclusionReason(string Why, RuleTrace Trace);
