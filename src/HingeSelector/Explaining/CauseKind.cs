namespace HingeSelector.Explaining;

/// <summary>Why an option is not the first choice.</summary>
public enum CauseKind
{
    /// <summary>A stop holds; nothing, or only what it allows, may be pulled.</summary>
    Stop,

    /// <summary>A question must be answered first.</summary>
    NotAnswered,

    /// <summary>A rule takes the option out.</summary>
    Excluded,

    /// <summary>A rule that would give it points misses by one condition.</summary>
    Missed,

    /// <summary>A rule that may give it points waits for a fact.</summary>
    NotMeasured,

    /// <summary>The first choice has more points in a criterion.</summary>
    Beaten,

    /// <summary>Points are equal and the order decides.</summary>
    Order,

    /// <summary>The variant of the block stays first.</summary>
    Block,
}
