namespace HingeSelector.Recommending;

/// <summary>A caution about the athlete, whatever is pulled.</summary>
/// <param name="Text">What to beware of.</param>
/// <param name="Trace">The rule behind it.</param>
public sealed record AthleteCaution(string Text, RuleTrace Trace);
