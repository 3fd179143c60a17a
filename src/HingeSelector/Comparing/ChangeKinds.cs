namespace HingeSelector.Comparing;

/// <summary>What differs between two answers for one athlete, the gravest first.</summary>
[Flags]
public enum ChangeKinds
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A stop disappears or becomes weaker.</summary>
    StopGone = 1,

    /// <summary>A question that held the athlete no longer does.</summary>
    HoldGone = 1 << 1,

    /// <summary>A stop appears or becomes stricter.</summary>
    StopNew = 1 << 2,

    /// <summary>A question holds the athlete that did not.</summary>
    HoldNew = 1 << 3,

    /// <summary>Another kind of answer.</summary>
    Outcome = 1 << 4,

    /// <summary>Another variant stands first.</summary>
    FirstChoice = 1 << 5,

    /// <summary>Other variants are out.</summary>
    Out = 1 << 6,

    /// <summary>The variants that are ranked both times stand in another order.</summary>
    Order = 1 << 7,

    /// <summary>Points of a criterion.</summary>
    Points = 1 << 8,

    /// <summary>Height or grip, or the band around it.</summary>
    Band = 1 << 9,

    /// <summary>Straps, lowering, load, repetitions, speed, footwear or stance.</summary>
    SetUp = 1 << 10,

    /// <summary>What is said to the athlete.</summary>
    Cues = 1 << 11,

    /// <summary>What to beware of.</summary>
    Cautions = 1 << 12,
}
