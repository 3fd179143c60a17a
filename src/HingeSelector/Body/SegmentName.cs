namespace HingeSelector.Body;

/// <summary>A length of the body that the posture model uses, between the landmarks of the 2012 survey.</summary>
public enum SegmentName
{
    /// <summary>Floor to the tip of the outer ankle bone.</summary>
    AnkleHeight,

    /// <summary>Outer ankle bone to the outer side of the knee (lateral femoral epicondyle).</summary>
    Shank,

    /// <summary>Outer side of the knee to the bony point of the hip (trochanterion).</summary>
    Thigh,

    /// <summary>Bony point of the hip to the tip of the shoulder (acromion).</summary>
    TrunkToAcromion,

    /// <summary>Tip of the shoulder to the centre of the gripped rod, elbow straight.</summary>
    ArmToGrip,

    /// <summary>Between the tips of the two shoulders.</summary>
    BiacromialBreadth,

    /// <summary>Across the hips, standing.</summary>
    HipBreadth,

    /// <summary>Across the crests of the pelvis.</summary>
    TrunkBreadth,

    /// <summary>Back of the heel to the longest toe.</summary>
    FootLength,

    /// <summary>Back of the heel to the ankle joint, level.</summary>
    HeelToAnkle,

    /// <summary>Back of the heel to the ball of the foot, level.</summary>
    HeelToBall,

    /// <summary>Wrist (radial stylion) to the centre of the gripped rod.</summary>
    WristToGrip,

    /// <summary>Elbow to elbow, upper arms straight out to the sides.</summary>
    ElbowToElbow,
}
