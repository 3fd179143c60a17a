namespace HingeSelector.Posture;

/// <summary>
/// A solved position as plain numbers (metres above the sole's upper side, radians), so that a search can try thousands
/// without leaving anything behind for the garbage collector.
/// </summary>
internal struct Pose
{
    public PoseStatus Status;
    public double KneeX, KneeY, KneeZ;
    public double HipX, HipY;
    public double ShoulderX, ShoulderY;
    public double HandX, HandY;
    public double Trunk, ThighInSideView, ShankForward;
    public double KneeFlexion, TrunkThighFlexion;
    public double ThighOutSine, ThighUpSine, ArmOutSine, DorsiflexionTangent;
    public double ArmToKnee, TrunkRoom, Travel;
    public bool ShinTouches;

    /// <summary>Thigh out to the side; angles that a search does not need are worked out only when asked for.</summary>
    public readonly double ThighOut => Math.Asin(ThighOutSine);

    /// <summary>Thigh above level, in space.</summary>
    public readonly double ThighInSpace => Math.Asin(Math.Clamp(ThighUpSine, -1, 1));

    /// <summary>Arm out to the side.</summary>
    public readonly double ArmOut => Math.Asin(ArmOutSine);

    /// <summary>Shank over the foot.</summary>
    public readonly double Dorsiflexion => Math.Atan(DorsiflexionTangent);

    /// <summary>Bend of thigh against pelvis in degrees: the low back can't supply more than the whole bend.</summary>
    public readonly double HipDemand(double lumbarShare) => Math.Max(0, double.RadiansToDegrees(TrunkThighFlexion) - lumbarShare);
}
