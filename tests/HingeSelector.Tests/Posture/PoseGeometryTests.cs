using HingeSelector.Body;
using HingeSelector.Posture;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Posture;

public sealed class PoseGeometryTests
{
    public static TheoryData<string, double, double> EveryPull => new()
    {
        { nameof(Conventional), 22.5, 55 },
        { nameof(Conventional), 11.5, 55 },
        { nameof(Conventional), 40, 100 },
        { nameof(Sumo), 22.5, 47 },
        { nameof(Hex), 22.5, 60 },
        { nameof(Hex), 32, 60 },
        { nameof(Romanian), 35, 55 },
        { nameof(Romanian), 55, 55 },
    };

    [Theory]
    [MemberData(nameof(EveryPull))]
    public void Segment_lengths_survive_the_solver(string name, double height, double grip)
    {
        var pull = Pull(name);
        var segments = MeanMan.Segments;
        var p = Solved(segments, pull, At(height, grip, pull, segments, sole: 2));
        var hipZ = Parameters.HipSpacingRatio * segments.Metres(SegmentName.HipBreadth) / 2;
        var thigh = segments.Metres(SegmentName.Thigh);
        var aside = thigh * Math.Sin(p.HipAbductionDemand.Radians);
        Distance(p.Knee, p.Hip, aside).ShouldBe(thigh, 1e-9);
        var outward = hipZ + aside - (pull.Stance.Amount / 2);
        Distance(p.Ankle, p.Knee, outward).ShouldBe(segments.Metres(SegmentName.Shank), 1e-9);
        var trunk = (segments.Metres(SegmentName.TrunkToAcromion) - Parameters.ShoulderDrop) * Parameters.TrunkChordFactor;
        Distance(p.Hip, p.Shoulder, 0).ShouldBe(trunk, 1e-9);
        var arm = segments.Metres(SegmentName.ArmToGrip) - Parameters.ShoulderDrop + Parameters.ReachAllowance;
        Distance(p.Shoulder, p.Hand, arm * Math.Sin(p.ShoulderAbduction.Radians)).ShouldBe(arm, 1e-9);
    }

    [Theory]
    [MemberData(nameof(EveryPull))]
    public void Hands_are_where_the_set_up_puts_them_and_hips_are_behind_the_knees(string name, double height, double grip)
    {
        var pull = Pull(name);
        var p = Solved(MeanMan.Segments, pull, At(height, grip, pull, MeanMan.Segments, sole: 2));
        p.Hand.Y.ShouldBe(height / 100, 1e-12);
        p.Hip.X.ShouldBeLessThan(p.Knee.X);
        (180 - p.TrunkThighFlexion.Degrees).ShouldBe(p.TrunkAboveLevel.Degrees + p.ThighAboveLevelInSideView.Degrees, 1e-9);
        p.HipDemand.Degrees.ShouldBe(p.TrunkThighFlexion.Degrees - Parameters.LumbarShare, 1e-9);
    }

    [Fact]
    public void A_shin_that_touches_the_bar_is_one_shin_depth_and_half_a_bar_away_from_it()
    {
        var p = Solved(MeanMan.Segments, Conventional, At(22.5, 55, Conventional, MeanMan.Segments));
        p.ShinTouchesBar.ShouldBeTrue();
        var dx = p.Knee.X - p.Ankle.X;
        var dy = p.Knee.Y - p.Ankle.Y;
        var apart = (((p.Hand.X - p.Ankle.X) * dy) - ((p.Hand.Y - p.Ankle.Y) * dx)) / Math.Sqrt((dx * dx) + (dy * dy));
        apart.ShouldBe(Parameters.ShinDepth + Parameters.BarRadius, 1e-9);
    }

    [Fact]
    public void A_bar_on_small_discs_lies_free_of_the_shin_and_the_shank_leans_no_farther_than_its_limit()
    {
        var p = Solved(MeanMan.Segments, Conventional, At(11.5, 55, Conventional, MeanMan.Segments));
        p.ShinTouchesBar.ShouldBeFalse();
        p.ShankForward.Degrees.ShouldBe(Parameters.ShankLeanLimit, 1e-9);
    }

    [Fact]
    public void A_Romanian_hinge_keeps_its_knees_and_lowers_the_trunk_with_the_bar()
    {
        var high = Solved(MeanMan.Segments, Romanian, At(45, 55, Romanian, MeanMan.Segments));
        var low = Solved(MeanMan.Segments, Romanian, At(30, 55, Romanian, MeanMan.Segments));
        high.KneeFlexion.Degrees.ShouldBe(20, 1e-9);
        low.KneeFlexion.Degrees.ShouldBe(20, 1e-9);
        low.TrunkAboveLevel.ShouldBeLessThan(high.TrunkAboveLevel);
    }

    [Fact]
    public void What_cannot_be_is_a_stated_reason()
    {
        Outcome(Conventional, 22.5, 170).ShouldBe(new Folded(FoldedReason.ShoulderAtKnee));
        Outcome(Conventional, 22.5, 180).ShouldBe(new Unreachable(UnreachableReason.GripWiderThanArms));
        Outcome(Conventional, 90, 55).ShouldBe(new Unreachable(UnreachableReason.HandsAboveStanding));
        Outcome(Romanian, 90, 55).ShouldBe(new Unreachable(UnreachableReason.HandsAboveStanding));
        Outcome(Conventional, 8, 55).ShouldBe(new NotModelled(NotModelledReason.BarAtTheFoot));
        Outcome(Conventional with { Legs = LegUse.OneLeg }, 22.5, 55).ShouldBe(new NotModelled(NotModelledReason.OneLeg));
        Outcome(Hex, -60, 60).ShouldBeOfType<Folded>();
        var wide = Sumo with { Stance = new StanceRule(StanceBasis.Metres, 1.2, Deg(42)) };
        Outcome(wide, 22.5, 47).ShouldBe(new Unreachable(UnreachableReason.StanceWiderThanLegs));
        Outcome(Romanian with { Knees = KneeRule.Kept(Deg(0)) }, -30, 55).ShouldBeOfType<NotModelled>();
        Outcome(Hex with { Knees = KneeRule.Kept(Deg(5)) }, -40, 60).ShouldBe(new Unreachable(UnreachableReason.HandsTooLowForKeptKnees));
    }

    [Fact]
    public void A_load_between_the_feet_lets_the_shank_lean_freely_and_the_arms_hang_inwards()
    {
        var pull = Sumo with { Implement = ImplementKind.LoadBetweenFeet };
        var p = Solved(MeanMan.Segments, pull, At(28, 12, pull, MeanMan.Segments));
        p.Dorsiflexion.Degrees.ShouldBe(Parameters.FreeShankLean, 1e-9);
        p.ShoulderAbduction.Degrees.ShouldBeLessThan(0);
        p.ArmToKneeClearance.Metres.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void The_hip_window_holds_the_hip_height_of_the_position()
    {
        var setUp = At(22.5, 55, Conventional, MeanMan.Segments);
        var window = PostureSolver.HipWindow(MeanMan.Segments, Conventional, setUp, Parameters).ShouldNotBeNull();
        var hip = Solved(MeanMan.Segments, Conventional, setUp).HipHeight;
        hip.ShouldBeInRange(window.Lowest, window.Highest);
        // Shoulders 3 to 8 cm ahead: the hips have a few centimetres, not a fist's breadth less and not half a thigh more.
        (window.Highest - window.Lowest).Centimetres.ShouldBeInRange(2, 8);
    }

    [Fact]
    public void Bar_height_is_half_the_largest_disc_and_what_it_stands_on()
        // 450 mm disc (rule summaries) on a 10 cm block.
        => HandHeight.OfBar(Cm(45), Cm(10)).Centimetres.ShouldBe(32.5, 1e-9);

    private static PostureOutcome Outcome(PullGeometry pull, double height, double grip)
        => PostureSolver.Solve(MeanMan.Segments, pull, At(height, grip, pull, MeanMan.Segments), Parameters);

    private static PullGeometry Pull(string name) => name switch
    {
        nameof(Conventional) => Conventional,
        nameof(Sumo) => Sumo,
        nameof(Hex) => Hex,
        _ => Romanian,
    };

    private static double Distance(Point a, Point b, double aside)
        => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2) + (aside * aside));
}
