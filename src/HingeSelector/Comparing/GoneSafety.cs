using HingeSelector.Diagnostics;

namespace HingeSelector.Comparing;

/// <summary>A stop that disappears or becomes weaker, or a question that no longer holds an athlete.</summary>
/// <param name="Id">Id of the rule, or the word of the question.</param>
/// <param name="What">What happens to it.</param>
/// <param name="Athletes">Ids of the athletes of the roster who lose it; empty when nobody on the roster has it.</param>
/// <param name="Acknowledged">Whether somebody has acknowledged it.</param>
/// <param name="Was">Where the rule stood; outside any file for a question.</param>
public sealed record GoneSafety(string Id, string What, IReadOnlyList<string> Athletes, bool Acknowledged, SourceSpan Was);
