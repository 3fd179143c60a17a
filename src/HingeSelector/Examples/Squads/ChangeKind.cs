namespace HingeSelector.Examples.Squads;

/// <summary>What differs between two decisions, the gravest first.</summary>
public enum ChangeKind
{
    /// <summary>A stop no longer holds.</summary>
    StopGone,

    /// <summary>A stop holds that did not.</summary>
    StopNew,

    /// <summary>Another kind of answer.</summary>
    Outcome,

    /// <summary>An athlete is in one of the two only.</summary>
    Athlete,

    /// <summary>Another first choice.</summary>
    FirstChoice,

    /// <summary>A variant is out that was not, or the other way round, or for other rules.</summary>
    Excluded,

    /// <summary>Another order behind the first.</summary>
    Order,

    /// <summary>Another height or grip.</summary>
    Band,

    /// <summary>Straps, load, speed and the like.</summary>
    SetUp,

    /// <summary>Points of a criterion.</summary>
    Points,

    /// <summary>Cues.</summary>
    Cues,

    /// <summary>Cautions or unanswered questions.</summary>
    Cautions,
}
