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
    public double Trunk, ThighInSideView, ThighInSpace, ShankForward;
    public double KneeFlexion, TrunkThighFlexion;
    public double ThighOut, Dorsiflexion, ArmOut;
    public double ArmToKnee, TrunkRoom, Travel;
    public bool ShinTouches;

    /// <summary>Bend of thigh against pelvis in degrees: the low back can't supply more than the whole bend.</summary>
    public readonly double HipDemand(double lumbarShare) => Math.Max(0, double.RadiansToDegrees(TrunkThighFlexion) - lumbarShare);
}
