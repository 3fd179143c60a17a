using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>A start position in the side view, with what it asks of each joint.</summary>
public sealed record StartPosition : PostureOutcome
{
    /// <summary>The ankle.</summary>
    public required Point Ankle { get; init; }

    /// <summary>The knee.</summary>
    public required Point Knee { get; init; }

    /// <summary>The hip.</summary>
    public required Point Hip { get; init; }

    /// <summary>Centre of the shoulder joint.</summary>
    public required Point Shoulder { get; init; }

    /// <summary>Centre of the gripped rod.</summary>
    public required Point Hand { get; init; }

    /// <summary>Heel, at the height of the sole's upper side.</summary>
    public required Point Heel { get; init; }

    /// <summary>Ball of the foot, at the height of the sole's upper side.</summary>
    public required Point Ball { get; init; }

    /// <summary>Line hip to shoulder above level, side view.</summary>
    public required Angle TrunkAboveLevel { get; init; }

    /// <summary>Line knee to hip above level, in space: a thigh turned out to the side counts at its own steepness.</summary>
    public required Angle ThighAboveLevel { get; init; }

    /// <summary>Line knee to hip above level, side view.</summary>
    public required Angle ThighAboveLevelInSideView { get; init; }

    /// <summary>Shank forward of upright, side view.</summary>
    public required Angle ShankForward { get; init; }

    /// <summary>Bend of the knee; 0 is straight.</summary>
    public required Angle KneeFlexion { get; init; }

    /// <summary>Bend between trunk and thigh, side view; 0 is standing tall.</summary>
    public required Angle TrunkThighFlexion { get; init; }

    /// <summary>What is left of that bend for thigh against pelvis when the low back has supplied its share.</summary>
    public required Angle HipDemand { get; init; }

    /// <summary>Thigh out to the side of its hip.</summary>
    public required Angle HipAbductionDemand { get; init; }

    /// <summary>Foot turn-out that the hip must supply, the part below the knee taken off.</summary>
    public required Angle HipRotationDemand { get; init; }

    /// <summary>Each foot from straight ahead.</summary>
    public required Angle TurnOut { get; init; }

    /// <summary>Shank over the foot, in the direction in which the foot points.</summary>
    public required Angle Dorsiflexion { get; init; }

    /// <summary>Arm out to the side; 0 hangs straight below the shoulder, negative reaches inwards.</summary>
    public required Angle ShoulderAbduction { get; init; }

    /// <summary>The shin touches the bar.</summary>
    public required bool ShinTouchesBar { get; init; }

    /// <summary>
    /// Seen from the front at the height of the knee: how much more room there is between arm and knee than they need.
    /// Negative when they meet.
    /// </summary>
    public required Length ArmToKneeClearance { get; init; }

    /// <summary>
    /// Seen from the front: the room between the knees less the breadth of the trunk. Positive when the trunk comes down
    /// between the thighs, negative when it comes down onto them.
    /// </summary>
    public required Length TrunkClearance { get; init; }

    /// <summary>Height of the hip above the floor.</summary>
    public Length HipHeight => Length.FromMetres(Hip.Y);

    /// <summary>Distance that the hands travel from here to standing tall with the arms hanging.</summary>
    public required Length Travel { get; init; }
}
