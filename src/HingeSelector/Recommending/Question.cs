using HingeSelector.Knowledge;
using HingeSelector.Screening;

namespace HingeSelector.Recommending;

/// <summary>The five inputs of an answer and the day for which it is asked.</summary>
/// <param name="Athlete">Athlete, screen and day.</param>
/// <param name="Room">The room; null when none is given.</param>
/// <param name="Standing">The standing choice; null when none is given.</param>
/// <param name="Philosophy">Weights.</param>
/// <param name="On">Day of the answer.</param>
/// <param name="Decision">The decision that made the philosophy that of record; null when it was asked for or is the default.</param>
public sealed record Question(AthleteRecord Athlete, Room? Room, StandingChoice? Standing, Philosophy Philosophy, DateOnly On, PhilosophyDecision? Decision = null)
{
    /// <summary>The standing choice when it has begun and its block has not ended.</summary>
    public StandingChoice? StandingInForce => Standing is { } s && s.Since <= On && s.BlockEnds is not { } end ? s : Standing is { } t && t.Since <= On && t.BlockEnds >= On ? t : null;
}
