namespace HingeSelector.Recommending;

/// <summary>A rule that cannot be decided because facts are not known.</summary>
/// <param name="Trace">The rule and what it read.</param>
/// <param name="Missing">Ids of the words that are not known.</param>
/// <param name="Candidate">Id of the variant; null when it is about the athlete.</param>
public sealed record OpenRule(RuleTrace Trace, IReadOnlyList<string> Missing, string? Candidate);
