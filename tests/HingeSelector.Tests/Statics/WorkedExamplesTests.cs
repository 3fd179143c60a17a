using HingeSelector.Statics;
using static HingeSelector.Tests.Posture.Examples;
using Force = HingeSelector.Quantities.Force;
using Length = HingeSelector.Quantities.Length;
using Moment = HingeSelector.Quantities.Moment;

namespace HingeSelector.Tests.Statics;

/// <summary>Validation case V4: textbook statics. 0.1 % against exact values, 0.5 % against printed ones.</summary>
public sealed class WorkedExamplesTests
{
    private const double Exact = 0.001;
    private const double Printed = 0.005;

    // Upright 55.0 kg at 0.350 m and 30.0 kg at 0.500 m, muscle arm 0.0800 m, g = 9.80.
    [Fact]
    public void W1_OpenStax_College_Physics_9_6_muscle_is_4195_6_N_and_five_times_the_weight()
    {
        var balance = LeverBalance.Of(Deg(90), [Load(55 * 9.80, 0.350), Load(30 * 9.80, 0.500)], Length.FromMetres(0.08), Deg(90));
        Near(balance.Muscle.Newtons, 4195.6, Exact);
        Near(balance.Muscle.Newtons, 4.20e3, Printed);
        Near(balance.Muscle.Newtons / (85 * 9.80), 5.04, Exact);
    }

    [Fact]
    public void W1b_OpenStax_College_Physics_9_6_joint_force_is_4656_8_N_at_38_0_degrees()
    {
        var (size, above) = LeverBalance.JointForce(Force.FromNewtons(4195.6), Deg(29), Force.FromNewtons(85 * 9.80));
        Near(size.Newtons, 4656.8, Exact);
        Near(size.Newtons * Math.Cos(above.Radians), 3669.6, Exact);
        Near(size.Newtons * Math.Sin(above.Radians), 2867.1, Exact);
        Near(above.Degrees, 38.0, Exact);
        Near(size.Newtons, 4.66e3, Printed);
    }

    // Level rod, 350 N at half its length, 200 N at its end, cable at two thirds, 12 degrees.
    [Fact]
    public void W2_Serway_and_Faughn_P8_17_cable_is_2705_5_N()
    {
        var balance = LeverBalance.Of(Deg(90), [Load(350, 0.5), Load(200, 1)], Length.FromMetres(2.0 / 3), Deg(12));
        Near(balance.Muscle.Newtons, 2705.5, Exact);
        Near(balance.AxialReaction.Newtons, 2646.4, Exact);
        balance.TransverseReaction.Newtons.ShouldBe(-12.5, 0.0125);
    }

    [Theory]
    [InlineData("W3 Nordin and Frankel form", 450, 0.25, 200, 0.40, 192.5, 3850, 4382, 373)]
    [InlineData("W3b class variant, derived values", 510, 0.25, 150, 0.40, 187.5, 3750, 4290.6, 378.6)]
    public void W3_low_back_force_compression_and_shear(
        string source, double trunk, double trunkArm, double load, double loadArm, double moment, double muscle, double compression, double shear)
    {
        source.ShouldStartWith("W3");
        var back = LowBackEstimate.From(
            Moment.FromNewtonMetres((trunk * trunkArm) + (load * loadArm)), Force.FromNewtons(trunk + load), Deg(35), Length.FromMetres(0.05), Deg(0));
        Near(back.Moment.NewtonMetres, moment, Exact);
        Near(back.Muscle.Newtons, muscle, Exact);
        Near(back.Compression.Newtons, compression, Exact);
        Near(back.LoadShear.Newtons, shear, Exact);
    }

    // Trunk 60 degrees from upright, 320 N at half, muscle at two thirds, 12 degrees.
    [Theory]
    [InlineData("W4 Davidovits 1.8", 160, 1999.4, 2195.7)]
    [InlineData("W4b with 20 kg in the hands", 356, 3224, 3492)]
    public void W4_Davidovits_1_8_muscle_and_reaction(string source, double end, double muscle, double axial)
    {
        source.ShouldStartWith("W4");
        var balance = LeverBalance.Of(Deg(60), [Load(320, 0.5), Load(end, 1)], Length.FromMetres(2.0 / 3), Deg(12));
        Near(balance.Muscle.Newtons, muscle, Exact);
        Near(balance.AxialReaction.Newtons, axial, Exact);
        if (end == 160)
            balance.TransverseReaction.Newtons.ShouldBe(0, 0.1);
    }

    // A student report of low quality: only moment over 0.05 m is used.
    [Theory]
    [InlineData(250.3, 5006)]
    [InlineData(273.4, 5470)]
    public void W5_student_report_muscle_is_moment_over_five_centimetres(double moment, double muscle)
        => Near(Muscle(moment, 0.05), muscle, Exact);

    [Fact]
    public void W7_Cholewicki_1991_988_N_m_over_six_centimetres_is_16467_N()
        => Near(Muscle(988, 0.06), 16_467, Exact);

    private static double Muscle(double moment, double arm)
        => LowBackEstimate.From(Moment.FromNewtonMetres(moment), Force.Zero, Deg(0), Length.FromMetres(arm), Deg(0)).Muscle.Newtons;

    private static LeverLoad Load(double newtons, double along) => new(Force.FromNewtons(newtons), Length.FromMetres(along));

    private static void Near(double value, double expected, double share) => value.ShouldBe(expected, Math.Abs(expected) * share);
}
