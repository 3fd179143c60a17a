using HingeSelector.Body;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Tests.Body;

namespace HingeSelector.Tests.Posture;

/// <summary>Bodies, pulls and rooms that several tests use.</summary>
internal static class Examples
{
    public static ModelParameters Parameters => ModelFile.Parameters;

    /// <summary>The mean man of the 2012 survey: 1.756 m, 85.5 kg (biomechanics 2.4).</summary>
    public static KnownBody MeanMan { get; } = Adult(Sex.Male, 1.756, 85.5);

    public static PullGeometry Conventional { get; } = new()
    {
        Implement = ImplementKind.StraightBar,
        Stance = new StanceRule(StanceBasis.Metres, 0.32, Deg(14)),
        Grip = new GripRule(GripBasis.OutsideLegs, 0, 0.1),
    };

    public static PullGeometry Sumo { get; } = new()
    {
        Implement = ImplementKind.StraightBar,
        Arms = ArmPlacement.InsideLegs,
        Stance = new StanceRule(StanceBasis.Metres, 0.70, Deg(42)),
        Grip = new GripRule(GripBasis.Metres, 0.43, 0.51),
    };

    public static PullGeometry Hex { get; } = new()
    {
        Implement = ImplementKind.HandlesBeside,
        Stance = new StanceRule(StanceBasis.Metres, 0.32, Deg(14)),
        Grip = new GripRule(GripBasis.Metres, 0.6, 0.6),
    };

    public static PullGeometry Romanian { get; } = Conventional with { Knees = KneeRule.Kept(Deg(20)) };

    public static IReadOnlyList<Length> RoomHeights { get; } = [.. Enumerable.Range(0, 14).Select(i => Cm(22.5 + (2.5 * i)))];

    public static IReadOnlyList<Length> Grips { get; } = [.. Enumerable.Range(0, 10).Select(i => Cm(55 + (5 * i)))];

    public static Angle Deg(double degrees) => Angle.FromDegrees(degrees);

    public static Length Cm(double centimetres) => Length.FromCentimetres(centimetres);

    public static KnownBody Adult(Sex sex, double stature, double? kilograms = null, double age = 28)
        => BodyEstimator.Estimate(
            new BodyMeasures
            {
                Sex = sex,
                AgeYears = age,
                Stature = Length.FromMetres(stature),
                Mass = kilograms is { } kg ? Mass.FromKilograms(kg) : null,
            },
            ModelFile.Survey,
            Parameters).ShouldBeOfType<KnownBody>();

    /// <summary>A set-up by hand height and grip in centimetres, feet as the variant stands.</summary>
    public static SetUp At(double height, double grip, PullGeometry pull, Segments segments, double sole = 0)
        => new(Cm(height), Cm(sole), Cm(grip), pull.Stance.WidthFor(segments), pull.Stance.TurnOut);

    public static StartPosition Solved(Segments segments, PullGeometry pull, SetUp setUp, ModelParameters? parameters = null)
        => PostureSolver.Solve(segments, pull, setUp, parameters ?? Parameters).ShouldBeOfType<StartPosition>();

    public static RangeOfMotion Hips(double raise, double bent, double error = 3) => Both(new SideRange
    {
        StraightLegRaise = new HipFlexionMeasure(Deg(raise), Deg(error), PelvisHeld.Yes),
        KneeBentHipFlexion = new HipFlexionMeasure(Deg(bent), Deg(error), PelvisHeld.Yes),
    });

    public static RangeOfMotion Both(SideRange side) => new(side, side);

    public static SetUpRequest Request(HeightRequest height, GripRequest grip = GripRequest.Standard) => new()
    {
        Heights = RoomHeights,
        Grips = Grips,
        StandardHeight = Cm(22.5),
        StandardGrip = Cm(55),
        Height = height,
        Grip = grip,
    };
}
