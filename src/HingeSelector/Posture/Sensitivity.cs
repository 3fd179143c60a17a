using HingeSelector.Body;

namespace HingeSelector.Posture;

/// <summary>How to change one field of a <see cref="PoseInput"/> by the name of its segment or parameter.</summary>
internal static class Sensitivity
{
    /// <summary>Segments that move the side view.</summary>
    public static IReadOnlyList<SegmentName> Segments { get; } =
    [
        SegmentName.AnkleHeight, SegmentName.Shank, SegmentName.Thigh, SegmentName.TrunkToAcromion, SegmentName.ArmToGrip,
        SegmentName.BiacromialBreadth, SegmentName.HipBreadth, SegmentName.FootLength, SegmentName.HeelToAnkle,
    ];

    /// <summary>Parameters that move the side view of every pull.</summary>
    private static readonly string[] Everywhere =
        ["reach-allowance", "trunk-chord-factor", "shoulder-drop", "shoulder-spacing-ratio", "hip-spacing-ratio", "bar-over-foot"];

    private static readonly string[] StraightBar = [.. Everywhere, "shin-depth", "shank-lean-limit", "shoulder-ahead"];

    private static readonly string[] FreeShank = [.. Everywhere, "free-shank-lean", "handle-line", "shoulder-ahead-free"];

    private static readonly string[] StraightBarHinge = [.. Everywhere, "shin-depth", "shank-lean-limit"];

    private static readonly string[] FreeHinge = [.. Everywhere, "shin-depth", "shank-lean-limit", "handle-line"];

    /// <summary>Parameters that move the side view of one pull; the others would only cost time.</summary>
    public static IReadOnlyList<string> ParametersFor(PullGeometry pull) => (pull.Implement, pull.Knees.GivenFlexion) switch
    {
        (ImplementKind.StraightBar, null) => StraightBar,
        (ImplementKind.StraightBar, _) => StraightBarHinge,
        (_, null) => FreeShank,
        _ => FreeHinge,
    };

    /// <summary>The field of a segment.</summary>
    public static ref double Field(ref PoseInput input, SegmentName name)
    {
        switch (name)
        {
            case SegmentName.AnkleHeight: return ref input.AnkleHeight;
            case SegmentName.Shank: return ref input.Shank;
            case SegmentName.Thigh: return ref input.Thigh;
            case SegmentName.TrunkToAcromion: return ref input.TrunkToAcromion;
            case SegmentName.ArmToGrip: return ref input.ArmToGrip;
            case SegmentName.BiacromialBreadth: return ref input.Biacromial;
            case SegmentName.HipBreadth: return ref input.HipBreadth;
            case SegmentName.FootLength: return ref input.FootLength;
            case SegmentName.HeelToAnkle: return ref input.HeelToAnkle;
            default: throw new ArgumentOutOfRangeException(nameof(name), name, "This length does not move the side view.");
        }
    }

    /// <summary>Sets the field of a parameter, given in the unit of <see cref="ModelParameters"/>.</summary>
    public static void Set(ref PoseInput input, string id, double value)
    {
        switch (id)
        {
            case "reach-allowance": input.Reach = value; break;
            case "trunk-chord-factor": input.Chord = value; break;
            case "shoulder-drop": input.ShoulderDrop = value; break;
            case "shoulder-spacing-ratio": input.ShoulderSpacing = value; break;
            case "hip-spacing-ratio": input.HipSpacing = value; break;
            case "shin-depth": input.ShinDepth = value; break;
            case "bar-over-foot": input.BarOverFoot = value; break;
            case "shoulder-ahead": input.ShoulderAhead = value; break;
            case "shoulder-ahead-free": input.ShoulderAheadFree = value; break;
            case "shank-lean-limit": input.LeanLimit = double.DegreesToRadians(value); break;
            case "free-shank-lean": input.FreeLean = double.DegreesToRadians(value); break;
            case "handle-line": input.HandleLine = value; break;
            default: throw new ArgumentOutOfRangeException(nameof(id), id, "This parameter does not move the side view.");
        }
    }
}
