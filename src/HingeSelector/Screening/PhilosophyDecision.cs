using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>The philosophy of record of an athlete or a training group.</summary>
/// <param name="Athlete">Id of the athlete; null when it is decided for a group.</param>
/// <param name="TrainingGroup">The group as the roster names it; null when it is decided for an athlete.</param>
/// <param name="Philosophy">Id of the philosophy.</param>
/// <param name="Since">First day on which it is in force.</param>
/// <param name="DecidedBy">Who decided.</param>
/// <param name="Span">Where.</param>
public sealed record PhilosophyDecision(string? Athlete, string? TrainingGroup, string Philosophy, DateOnly Since, string DecidedBy, SourceSpan Span);
