namespace HingeSelector.Posture;

/// <summary>Why a set-up is out of reach.</summary>
public enum UnreachableReason
{
    /// <summary>The hands are farther out to the side than the arms are long.</summary>
    GripWiderThanArms,

    /// <summary>The hands are as high as, or higher than, they hang standing with lowered shoulders: nothing is left to pull.</summary>
    HandsAboveStanding,

    /// <summary>The feet stand wider than the legs can span.</summary>
    StanceWiderThanLegs,

    /// <summary>With the knees kept at their bend the hands do not come down so far.</summary>
    HandsTooLowForKeptKnees,
}
