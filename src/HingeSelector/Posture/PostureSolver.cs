using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Finds the position that a body takes in a set-up. Closed form: a solve takes well under a microsecond.</summary>
public static class PostureSolver
{
    /// <summary>The start position, or a stated reason why there is none.</summary>
    public static PostureOutcome Solve(Segments segments, PullGeometry pull, SetUp setUp, ModelParameters parameters)
    {
        var pose = PoseKernel.Solve(PoseInput.From(segments, pull, setUp, parameters));
        return Outcome(pose, segments, setUp, parameters);
    }

    /// <summary>
    /// The heights between which the hips may be at the start, both in place with the bar where it is: from the shoulder
    /// least ahead of the hands (hips low) to most ahead (hips high). Null when either has no position.
    /// </summary>
    public static HipHeightWindow? HipWindow(Segments segments, PullGeometry pull, SetUp setUp, ModelParameters parameters)
    {
        var id = pull.Implement == ImplementKind.StraightBar ? "shoulder-ahead" : "shoulder-ahead-free";
        var range = parameters.RangeOf(id);
        var low = Solve(segments, pull, setUp, parameters.With(id, range.Low));
        var high = Solve(segments, pull, setUp, parameters.With(id, range.High));
        return low is StartPosition a && high is StartPosition b
            ? new HipHeightWindow(Shorter(a.HipHeight, b.HipHeight), Longer(a.HipHeight, b.HipHeight))
            : null;
    }

    internal static PostureOutcome Outcome(in Pose pose, Segments segments, SetUp setUp, ModelParameters parameters) => pose.Status switch
    {
        PoseStatus.Solved => Position(pose, segments, setUp, parameters),
        PoseStatus.GripWiderThanArms => new Unreachable(UnreachableReason.GripWiderThanArms),
        PoseStatus.HandsAboveStanding => new Unreachable(UnreachableReason.HandsAboveStanding),
        PoseStatus.StanceWiderThanLegs => new Unreachable(UnreachableReason.StanceWiderThanLegs),
        PoseStatus.HandsTooLowForKeptKnees => new Unreachable(UnreachableReason.HandsTooLowForKeptKnees),
        PoseStatus.TrunkMeetsThighs => new Folded(FoldedReason.TrunkMeetsThighs),
        PoseStatus.ShoulderAtKnee => new Folded(FoldedReason.ShoulderAtKnee),
        PoseStatus.HipOnFloor => new Folded(FoldedReason.HipOnFloor),
        PoseStatus.OneLeg => new NotModelled(NotModelledReason.OneLeg),
        PoseStatus.BarAtTheFoot => new NotModelled(NotModelledReason.BarAtTheFoot),
        _ => new NotModelled(NotModelledReason.ShankLeansBack),
    };

    private static StartPosition Position(in Pose pose, Segments segments, SetUp setUp, ModelParameters parameters)
    {
        var sole = setUp.Sole.Metres;
        var straight = Math.Cos(setUp.TurnOut.Radians);
        var heel = segments.Metres(SegmentName.HeelToAnkle);
        return new StartPosition
        {
            Ankle = new Point(0, segments.Metres(SegmentName.AnkleHeight) + sole),
            Knee = new Point(pose.KneeX, pose.KneeY + sole),
            Hip = new Point(pose.HipX, pose.HipY + sole),
            Shoulder = new Point(pose.ShoulderX, pose.ShoulderY + sole),
            Hand = new Point(pose.HandX, pose.HandY + sole),
            Heel = new Point(-heel * straight, sole),
            Ball = new Point((segments.Metres(SegmentName.HeelToBall) - heel) * straight, sole),
            TrunkAboveLevel = Angle.FromRadians(pose.Trunk),
            ThighAboveLevel = Angle.FromRadians(pose.ThighInSpace),
            ThighAboveLevelInSideView = Angle.FromRadians(pose.ThighInSideView),
            ShankForward = Angle.FromRadians(pose.ShankForward),
            KneeFlexion = Angle.FromRadians(pose.KneeFlexion),
            TrunkThighFlexion = Angle.FromRadians(pose.TrunkThighFlexion),
            HipDemand = Angle.FromDegrees(pose.HipDemand(parameters.LumbarShare)),
            HipAbductionDemand = Angle.FromRadians(Math.Max(0, pose.ThighOut)),
            HipRotationDemand = Angle.FromDegrees(RotationDemand(setUp, parameters)),
            TurnOut = setUp.TurnOut,
            Dorsiflexion = Angle.FromRadians(pose.Dorsiflexion),
            ShoulderAbduction = Angle.FromRadians(pose.ArmOut),
            ShinTouchesBar = pose.ShinTouches,
            ArmToKneeClearance = Length.FromMetres(pose.ArmToKnee),
            TrunkClearance = Length.FromMetres(pose.TrunkRoom),
            Travel = Length.FromMetres(pose.Travel),
        };
    }

    internal static double RotationDemand(SetUp setUp, ModelParameters parameters)
        => Math.Max(0, setUp.TurnOut.Degrees - parameters.TurnOutBelowKnee);

    private static Length Shorter(Length a, Length b) => a < b ? a : b;

    private static Length Longer(Length a, Length b) => a < b ? b : a;
}
