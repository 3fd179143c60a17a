using HingeSelector.Body;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Body;

public sealed class RangeOfMotionTests
{
    // Biomechanics 4 (derived from Gajdosik 1993): straight-leg raise 62, knee 60: 102 at a slope of 0.66, 117 at 0.92.
    [Theory]
    [InlineData(0.66, 102)]
    [InlineData(0.92, 117)]
    public void Gajdosik_1993_slope_gives_the_derived_hip_flexion(double slope, double expected)
        => Hips(62, 150).Left.HipFlexionAt(Deg(60), Parameters.With("hamstring-slope", slope))!.Value.Degrees.ShouldBe(expected, 0.5);

    [Fact]
    public void The_knee_bent_reading_caps_what_a_bent_knee_gives_back()
        => Hips(90, 110).Left.HipFlexionAt(Deg(80), Parameters)!.Value.Degrees.ShouldBe(110);

    [Theory]
    [InlineData(PelvisHeld.Yes, 80)]
    [InlineData(PelvisHeld.No, 64)]
    [InlineData(PelvisHeld.Unknown, 64)]
    public void The_pelvis_share_is_taken_off_once_where_the_pelvis_was_not_held(PelvisHeld held, double expected)
    {
        var side = new SideRange { StraightLegRaise = new HipFlexionMeasure(Deg(80), Deg(3), held) };
        side.HipFlexionAt(Deg(0), Parameters.With("pelvis-share", 20))!.Value.Degrees.ShouldBe(expected, 1e-9);
    }

    [Fact]
    public void Nothing_measured_is_nothing_known() => SideRange.Nothing.HipFlexionAt(Deg(40), Parameters).ShouldBeNull();

    // Bennell 1998 (quoted from a secondary source): about 3.6 degrees per centimetre.
    [Fact]
    public void Bennell_1998_ten_centimetres_to_the_wall_are_about_36_degrees()
    {
        var ankle = AngleMeasure.FromKneeToWall(Cm(10), Cm(0.5), Parameters);
        ankle.Value.Degrees.ShouldBe(36, 1e-9);
        ankle.StandardError.Degrees.ShouldBe(1.8, 1e-9);
    }
}
