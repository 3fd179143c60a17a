using HingeSelector.Posture;
using HingeSelector.Quantities;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Posture;

public sealed class GripTests
{
    [Fact]
    public void The_narrowest_grip_outside_the_legs_just_clears_the_knees()
    {
        var segments = MeanMan.Segments;
        var setUp = At(22.5, 55, Conventional, segments);
        var range = GripRange.For(segments, Conventional, setUp, Parameters).ShouldNotBeNull();
        Solved(segments, Conventional, setUp with { Grip = range.From }).ArmToKneeClearance.Metres.ShouldBe(0, 1e-4);
        (range.To - range.From).Centimetres.ShouldBe(10, 1e-6);
        // Escamilla 2000: grip 55 +/- 10 cm at a stance of 32 cm.
        range.From.Centimetres.ShouldBeInRange(45, 55);
    }

    [Fact]
    public void The_widest_grip_inside_the_legs_just_clears_the_knees()
    {
        var segments = MeanMan.Segments;
        var pull = Sumo with { Grip = new GripRule(GripBasis.InsideLegs, 0.1, 0) };
        var setUp = At(22.5, 47, pull, segments);
        var range = GripRange.For(segments, pull, setUp, Parameters).ShouldNotBeNull();
        Solved(segments, pull, setUp with { Grip = range.To }).ArmToKneeClearance.Metres.ShouldBe(0, 1e-4);
    }

    // Biomechanics 2.4 (derived): elbow to elbow 1086.2 mm for the mean man of 1.756 m.
    [Fact]
    public void An_elbow_to_elbow_grip_follows_the_survey()
    {
        var pull = Conventional with { Grip = new GripRule(GripBasis.ElbowToElbow, 0.9, 1) };
        var range = GripRange.For(MeanMan.Segments, pull, At(22.5, 55, pull, MeanMan.Segments), Parameters).ShouldNotBeNull();
        range.To.Metres.ShouldBe(1.0862, 0.001);
        range.From.Metres.ShouldBe(1.0862 * 0.9, 0.001);
    }

    [Fact]
    public void Feet_come_closer_when_a_narrow_grip_needs_the_room()
    {
        var wide = Conventional with { Stance = new StanceRule(StanceBasis.Metres, 0.45, Deg(14)) };
        var placed = SetUpSearch.Place(MeanMan.Segments, wide, Cm(22.5), Cm(50), Length.Zero, Parameters);
        placed.Stance.ShouldBeLessThan(Cm(45));
        Solved(MeanMan.Segments, wide, placed).ArmToKneeClearance.Metres.ShouldBeGreaterThan(-0.001);
        SetUpSearch.Place(MeanMan.Segments, wide, Cm(22.5), Cm(80), Length.Zero, Parameters).Stance.ShouldBe(Cm(45));
    }

    [Fact]
    public void Grips_to_try_ascend_in_steps_and_stay_inside_the_range()
        => new GripRange(Cm(50), Cm(60)).Steps(Cm(2.5)).Select(g => Math.Round(g.Centimetres, 6)).ShouldBe([50, 52.5, 55, 57.5, 60]);

    // Ring marks 810 mm (powerlifting) and 1310 mm between collars: rule summaries.
}
