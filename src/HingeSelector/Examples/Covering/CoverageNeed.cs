namespace HingeSelector.Examples.Covering;

/// <summary>What some example of a rule should show of a condition.</summary>
public enum CoverageNeed
{
    /// <summary>It holds.</summary>
    Met,

    /// <summary>It fails.</summary>
    NotMet,

    /// <summary>It is open.</summary>
    Unknown,

    /// <summary>A number within one step of the threshold that counts.</summary>
    ThresholdInside,

    /// <summary>A number within one step of the threshold that does not count.</summary>
    ThresholdOutside,
}
