namespace HingeSelector.Recommending;

/// <summary>A cue for one candidate.</summary>
/// <param name="Say">What to say to the athlete.</param>
/// <param name="Trace">The rule behind it.</param>
public sealed record Cue(string Say, RuleTrace Trace);
