namespace HingeSelector.Posture;

/// <summary>
/// The planar rigid-link model in closed form: foot, shank, thigh, trunk chord, arm. Origin at the ankle joint on the upper
/// side of the sole; x forward, y up, z out to the side.
/// </summary>
internal static class PoseKernel
{
    public static Pose Solve(in PoseInput p)
    {
        var pose = new Pose();
        if (p.Legs == LegUse.OneLeg)
            return Ended(ref pose, PoseStatus.OneLeg);

        // A thicker sole brings the foot up to the bar: the same as a lower bar.
        pose.HandY = p.HandHeight - p.Sole;
        var onShins = p.Implement == ImplementKind.StraightBar;
        if (onShins && pose.HandY < p.LowestBar)
            return Ended(ref pose, PoseStatus.BarAtTheFoot);

        var midFoot = ((p.BarOverFoot * p.FootLength) - p.HeelToAnkle) * p.TurnOutCosine;
        pose.HandX = onShins ? midFoot : midFoot * p.HandleLine;
        if (!LeanShank(p, midFoot, ref pose) || !PlaceKnee(p, ref pose, out var thigh) || !ReachOfArm(p, ref pose, out var arm))
            return pose;

        var trunk = (p.TrunkToAcromion - p.ShoulderDrop) * p.Chord;
        var placed = p.KneesKept ? FromTheTop(p, thigh, trunk, arm, ref pose) : FromTheFloor(p, thigh, trunk, arm, ref pose);
        if (!placed)
            return pose;
        Measure(p, ref pose);
        if (pose.HipY + p.Sole <= 0)
            return Ended(ref pose, PoseStatus.HipOnFloor);
        // Between the knees there is room for the trunk; onto the thighs there is none.
        if (pose.TrunkThighFlexion > p.FoldLimit && pose.TrunkRoom < 0)
            return Ended(ref pose, PoseStatus.TrunkMeetsThighs);
        return pose;
    }

    private static Pose Ended(ref Pose pose, PoseStatus status)
    {
        pose.Status = status;
        return pose;
    }

    private static bool Fails(ref Pose pose, PoseStatus status)
    {
        pose.Status = status;
        return false;
    }

    private static bool LeanShank(in PoseInput p, double midFoot, ref Pose pose)
    {
        if (!p.KneesKept && p.Implement != ImplementKind.StraightBar)
        {
            // The shank leans over the foot, and the foot may point outwards.
            pose.ShankForward = Math.Atan(Math.Tan(p.FreeLean) * p.TurnOutCosine);
            return true;
        }

        // The shin touches a bar over the middle of the foot: the distance from bar to the line ankle-knee is known, so its
        // angle is too. Above the knee the bar leaves the shin and the lean stays what it was. A hinge keeps its shanks as
        // upright as a bar at that height would, whatever is in the hands.
        var up = Math.Min(pose.HandY - p.AnkleHeight, p.Shank);
        var apart = p.ShinDepth + p.BarRadius;
        var reach = Math.Sqrt((midFoot * midFoot) + (up * up));
        if (reach <= apart)
            return Fails(ref pose, PoseStatus.ShankLeansBack);
        var touching = Math.Atan2(midFoot, up) - Math.Asin(apart / reach);
        // A bar too low for the shin: the shank keeps its largest lean and the bar lies free in front of it.
        pose.ShankForward = Math.Min(touching, p.LeanLimit);
        pose.ShinTouches = p.Implement == ImplementKind.StraightBar && touching <= p.LeanLimit && pose.HandY - p.AnkleHeight <= p.Shank;
        return true;
    }

    private static bool PlaceKnee(in PoseInput p, ref Pose pose, out double thighInSideView)
    {
        var forward = Math.Tan(pose.ShankForward);
        var outward = forward * p.TurnOutTangent;
        var scale = p.Shank / Math.Sqrt(1 + (forward * forward) + (outward * outward));
        pose.KneeX = forward * scale;
        pose.KneeY = p.AnkleHeight + scale;
        pose.KneeZ = (p.Stance / 2) + (outward * scale);
        pose.DorsiflexionTangent = forward / p.TurnOutCosine;
        var aside = pose.KneeZ - (p.HipSpacing * p.HipBreadth / 2);
        thighInSideView = 0;
        if (Math.Abs(aside) >= p.Thigh)
            return Fails(ref pose, PoseStatus.StanceWiderThanLegs);
        pose.ThighOutSine = aside / p.Thigh;
        thighInSideView = Math.Sqrt((p.Thigh * p.Thigh) - (aside * aside));
        return true;
    }

    private static bool ReachOfArm(in PoseInput p, ref Pose pose, out double armInSideView)
    {
        var arm = p.ArmToGrip - p.ShoulderDrop + p.Reach;
        var aside = (p.Grip / 2) - HalfShoulders(p);
        armInSideView = 0;
        if (Math.Abs(aside) >= arm)
            return Fails(ref pose, PoseStatus.GripWiderThanArms);
        pose.ArmOutSine = aside / arm;
        armInSideView = Math.Sqrt((arm * arm) - (aside * aside));
        return true;
    }

    private static double HalfShoulders(in PoseInput p) => p.ShoulderSpacing * p.Biacromial / 2;

    /// <summary>The shoulder stands a little ahead of the hands; the hip closes the chain behind knee and shoulder.</summary>
    private static bool FromTheFloor(in PoseInput p, double thigh, double trunk, double arm, ref Pose pose)
    {
        var ahead = p.Implement == ImplementKind.StraightBar ? p.ShoulderAhead : p.ShoulderAheadFree;
        if (ahead >= arm)
            return Fails(ref pose, PoseStatus.GripWiderThanArms);
        pose.ShoulderX = pose.HandX + ahead;
        pose.ShoulderY = pose.HandY + Math.Sqrt((arm * arm) - (ahead * ahead));
        var dx = pose.ShoulderX - pose.KneeX;
        var dy = pose.ShoulderY - pose.KneeY;
        // With the shoulder down at the knee, "hips behind" has no meaning any more.
        if (dy <= 0)
            return Fails(ref pose, PoseStatus.ShoulderAtKnee);
        var apart = Math.Sqrt((dx * dx) + (dy * dy));
        if (apart >= thigh + trunk)
            return Fails(ref pose, PoseStatus.HandsAboveStanding);
        if (apart <= Math.Abs(thigh - trunk))
            return Fails(ref pose, PoseStatus.ShoulderAtKnee);
        var along = ((thigh * thigh) - (trunk * trunk) + (apart * apart)) / (2 * apart);
        var across = Math.Sqrt((thigh * thigh) - (along * along));
        pose.HipX = pose.KneeX + (((along * dx) - (across * dy)) / apart);
        pose.HipY = pose.KneeY + (((along * dy) + (across * dx)) / apart);
        // A knee bent the wrong way means that the legs are straight already: nothing is left to pull.
        var thighBack = Math.Atan2(pose.KneeX - pose.HipX, pose.HipY - pose.KneeY);
        return pose.ShankForward + thighBack >= 0 || Fails(ref pose, PoseStatus.HandsAboveStanding);
    }

    /// <summary>The knees keep their bend; the shoulder closes the chain above hip and hands.</summary>
    private static bool FromTheTop(in PoseInput p, double thigh, double trunk, double arm, ref Pose pose)
    {
        var thighBack = p.KeptKnees - pose.ShankForward;
        pose.HipX = pose.KneeX - (thigh * Math.Sin(thighBack));
        pose.HipY = pose.KneeY + (thigh * Math.Cos(thighBack));
        if (p.Implement == ImplementKind.StraightBar && pose.HandY > pose.KneeY)
        {
            // Above the knee the bar follows the front of the thigh, taken as far from its line as the shin is.
            pose.HandX = pose.KneeX - ((pose.HandY - pose.KneeY) * Math.Tan(thighBack)) + ((p.ShinDepth + p.BarRadius) / Math.Cos(thighBack));
        }

        var dx = pose.HandX - pose.HipX;
        var dy = pose.HandY - pose.HipY;
        var apart = Math.Sqrt((dx * dx) + (dy * dy));
        if (apart >= trunk + arm)
            return Fails(ref pose, PoseStatus.HandsTooLowForKeptKnees);
        if (apart <= Math.Abs(trunk - arm))
            return Fails(ref pose, PoseStatus.HandsAboveStanding);
        var along = ((trunk * trunk) - (arm * arm) + (apart * apart)) / (2 * apart);
        var across = Math.Sqrt((trunk * trunk) - (along * along));
        pose.ShoulderX = pose.HipX + (((along * dx) - (across * dy)) / apart);
        pose.ShoulderY = pose.HipY + (((along * dy) + (across * dx)) / apart);
        // A trunk that leans backwards is past the top of the lift.
        return pose.ShoulderX >= pose.HipX || Fails(ref pose, PoseStatus.HandsAboveStanding);
    }

    private static void Measure(in PoseInput p, ref Pose pose)
    {
        var thighX = pose.HipX - pose.KneeX;
        var thighY = pose.HipY - pose.KneeY;
        pose.Trunk = Math.Atan2(pose.ShoulderY - pose.HipY, pose.ShoulderX - pose.HipX);
        pose.ThighInSideView = Math.Atan2(thighY, -thighX);
        pose.ThighUpSine = thighY / p.Thigh;
        pose.TrunkThighFlexion = Math.PI - pose.Trunk - pose.ThighInSideView;

        // The knee bends in space: shank and thigh may both point out to the side.
        var hipZ = p.HipSpacing * p.HipBreadth / 2;
        var shankZ = pose.KneeZ - (p.Stance / 2);
        var dot = (pose.KneeX * thighX) + ((pose.KneeY - p.AnkleHeight) * thighY) + (shankZ * (hipZ - pose.KneeZ));
        pose.KneeFlexion = p.KneesKept ? p.KeptKnees : Math.Acos(Math.Clamp(dot / (p.Shank * p.Thigh), -1, 1));

        var atKnee = Math.Clamp((pose.KneeY - pose.HandY) / (pose.ShoulderY - pose.HandY), 0, 1);
        var armZ = (p.Grip / 2) + ((HalfShoulders(p) - (p.Grip / 2)) * atKnee);
        pose.ArmToKnee = (p.Arms == ArmPlacement.OutsideLegs ? armZ - pose.KneeZ : pose.KneeZ - armZ) - p.KneeArm;
        pose.TrunkRoom = (2 * (pose.KneeZ - p.KneeArm)) - p.TrunkBreadth;

        // Standing tall: legs straight from hip to foot, shoulders neither lowered nor drawn forward.
        var legsAside = (p.Stance / 2) - hipZ;
        var legs = p.Shank + p.Thigh;
        var handsAside = (p.Grip / 2) - HalfShoulders(p);
        var arm = p.ArmToGrip - p.ShoulderDrop;
        var standing = p.AnkleHeight + Math.Sqrt(Math.Max(0, (legs * legs) - (legsAside * legsAside))) + p.TrunkToAcromion - p.ShoulderDrop
            - Math.Sqrt(Math.Max(0, (arm * arm) - (handsAside * handsAside)));
        pose.Travel = standing - pose.HandY;
    }
}
