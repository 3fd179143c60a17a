namespace HingeSelector.Recommending;

/// <summary>A change of the set-up that a rule asks for.</summary>
/// <param name="Change">What is asked for.</param>
/// <param name="Trace">The rule behind it.</param>
public sealed record AskedChange(string Change, RuleTrace Trace);
