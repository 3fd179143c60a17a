namespace HingeSelector.Posture;

/// <summary>How a solve ended; one entry for each typed outcome.</summary>
internal enum PoseStatus
{
    Solved,
    GripWiderThanArms,
    HandsAboveStanding,
    StanceWiderThanLegs,
    HandsTooLowForKeptKnees,
    TrunkMeetsThighs,
    ShoulderAtKnee,
    HipOnFloor,
    OneLeg,
    BarAtTheFoot,
    ShankLeansBack,
}
