namespace HingeSelector.Screening;

/// <summary>What a column of a roster holds.</summary>
internal enum RosterColumnKind
{
    /// <summary>Nothing: a column without a name, which must stay empty.</summary>
    Unnamed,

    /// <summary>Id of the athlete.</summary>
    Id,

    /// <summary>A fact, or one side of it.</summary>
    Fact,

    /// <summary>One answer to a whole group.</summary>
    Blanket,

    /// <summary>Clearances.</summary>
    Clearance,

    /// <summary>Several held heights.</summary>
    HeldHeights,

    /// <summary>Date of the screen.</summary>
    ScreenDate,

    /// <summary>Day of the day's answers.</summary>
    DayDate,

    /// <summary>Who measured.</summary>
    MeasuredBy,

    /// <summary>Who asked.</summary>
    AskedBy,
}
