namespace HingeSelector.Recommending;

/// <summary>A caution about one candidate.</summary>
/// <param name="Text">What to beware of.</param>
/// <param name="Trace">The rule behind it; null where it stands in the variant's own file.</param>
public sealed record CandidateCaution(string Text, RuleTrace? Trace);
