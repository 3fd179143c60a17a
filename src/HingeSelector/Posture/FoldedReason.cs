namespace HingeSelector.Posture;

/// <summary>How the links fold.</summary>
public enum FoldedReason
{
    /// <summary>The belly meets the thighs before the hands are low enough.</summary>
    TrunkMeetsThighs,

    /// <summary>Shoulder and knee come closer than thigh and trunk can fold.</summary>
    ShoulderAtKnee,

    /// <summary>The hip would lie on the floor.</summary>
    HipOnFloor,
}
