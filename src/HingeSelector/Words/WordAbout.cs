namespace HingeSelector.Words;

/// <summary>Which of the five inputs, or which computation, a word belongs to.</summary>
public enum WordAbout
{
    /// <summary>Who the athlete is.</summary>
    Athlete,

    /// <summary>A dated measure.</summary>
    Screen,

    /// <summary>Today's answers.</summary>
    Day,

    /// <summary>Derived from the room file.</summary>
    Room,

    /// <summary>Computed for the athlete.</summary>
    Computed,

    /// <summary>A property of the variant, from its file.</summary>
    Variant,

    /// <summary>Computed for a candidate.</summary>
    Candidate,
}
