using HingeSelector.Body;

namespace HingeSelector.Posture;

/// <summary>
/// Everything one solve reads, as plain numbers (metres, radians). A struct: the error of a result is found by changing one
/// field of a copy and solving again.
/// </summary>
internal struct PoseInput
{
    public double AnkleHeight, Shank, Thigh, TrunkToAcromion, ArmToGrip, Biacromial, HipBreadth, TrunkBreadth, FootLength, HeelToAnkle;
    public double Reach, Chord, ShoulderDrop, ShoulderSpacing, HipSpacing, ShinDepth, BarRadius, BarOverFoot;
    public double ShoulderAhead, ShoulderAheadFree, LeanLimit, FreeLean, HandleLine, KneeArm, FoldLimit, LowestBar;
    public double HandHeight, Sole, Grip, Stance, TurnOutCosine, TurnOutTangent, KeptKnees;
    public ImplementKind Implement;
    public LegUse Legs;
    public ArmPlacement Arms;
    public bool KneesKept;

    public static PoseInput From(Segments segments, PullGeometry pull, SetUp setUp, ModelParameters parameters)
    {
        var input = new PoseInput
        {
            AnkleHeight = segments.Metres(SegmentName.AnkleHeight),
            Shank = segments.Metres(SegmentName.Shank),
            Thigh = segments.Metres(SegmentName.Thigh),
            TrunkToAcromion = segments.Metres(SegmentName.TrunkToAcromion),
            ArmToGrip = segments.Metres(SegmentName.ArmToGrip),
            Biacromial = segments.Metres(SegmentName.BiacromialBreadth),
            HipBreadth = segments.Metres(SegmentName.HipBreadth),
            TrunkBreadth = segments.Metres(SegmentName.TrunkBreadth),
            FootLength = segments.Metres(SegmentName.FootLength),
            HeelToAnkle = segments.Metres(SegmentName.HeelToAnkle),
            Reach = parameters.ReachAllowance,
            Chord = parameters.TrunkChordFactor,
            ShoulderDrop = parameters.ShoulderDrop,
            ShoulderSpacing = parameters.ShoulderSpacingRatio,
            HipSpacing = parameters.HipSpacingRatio,
            ShinDepth = parameters.ShinDepth,
            BarRadius = parameters.BarRadius,
            BarOverFoot = parameters.BarOverFoot,
            ShoulderAhead = parameters.ShoulderAhead,
            ShoulderAheadFree = parameters.ShoulderAheadFree,
            LeanLimit = double.DegreesToRadians(parameters.ShankLeanLimit),
            FreeLean = double.DegreesToRadians(parameters.FreeShankLean),
            HandleLine = parameters.HandleLine,
            KneeArm = parameters.KneeArmDistance,
            FoldLimit = double.DegreesToRadians(parameters.FoldLimit),
            LowestBar = parameters.LowestModelledBar,
            Implement = pull.Implement,
            Legs = pull.Legs,
            Arms = pull.Arms,
        };
        if (pull.Knees.GivenFlexion is { } kept)
        {
            input.KneesKept = true;
            input.KeptKnees = kept.Radians;
        }

        input.Place(setUp);
        return input;
    }

    /// <summary>Puts hands and feet where a set-up has them.</summary>
    public void Place(SetUp setUp)
    {
        HandHeight = setUp.HandHeight.Metres;
        Sole = setUp.Sole.Metres;
        Grip = setUp.Grip.Metres;
        Stance = setUp.Stance.Metres;
        TurnOutCosine = Math.Cos(setUp.TurnOut.Radians);
        TurnOutTangent = Math.Tan(setUp.TurnOut.Radians);
    }
}
