using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>What is known of an athlete's body; everything may be missing.</summary>
public sealed record BodyMeasures
{
    /// <summary>Sex, when given.</summary>
    public Sex Sex { get; init; }

    /// <summary>Age in years on the day of the screen.</summary>
    public double? AgeYears { get; init; }

    /// <summary>Stature without shoes.</summary>
    public Length? Stature { get; init; }

    /// <summary>Body mass; posture needs none, moments do.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Bony point of the hip to the outer side of the knee.</summary>
    public Length? Thigh { get; init; }

    /// <summary>Outer side of the knee to the outer ankle bone.</summary>
    public Length? Shank { get; init; }

    /// <summary>Bony point of the hip to the tip of the shoulder, standing.</summary>
    public Length? TrunkToAcromion { get; init; }

    /// <summary>Tip of the shoulder to the centre of the fist, elbow straight.</summary>
    public Length? ArmToGrip { get; init; }

    /// <summary>The two sides, or one segment, differ from what stature says (amputation, growth, surgery).</summary>
    public bool LimbDifference { get; init; }

    /// <summary>Whether thigh, shank, trunk and arm were all measured.</summary>
    public bool AllMainSegmentsMeasured => Thigh.HasValue && Shank.HasValue && TrunkToAcromion.HasValue && ArmToGrip.HasValue;
}
