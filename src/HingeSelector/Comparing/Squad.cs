using HingeSelector.Recommending;
using HingeSelector.Screening;

namespace HingeSelector.Comparing;

/// <summary>Athletes as read with the words of one rule book, and the question about each.</summary>
/// <param name="Athletes">The athletes.</param>
/// <param name="About">Room, standing choice, philosophy and day of each.</param>
public sealed record Squad(IReadOnlyList<AthleteRecord> Athletes, Func<AthleteRecord, Question> About);
