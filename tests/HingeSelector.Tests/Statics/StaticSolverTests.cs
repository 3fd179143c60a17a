using HingeSelector.Body;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Statics;
using HingeSelector.Tests.Body;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Statics;

public sealed class StaticSolverTests
{
    private static readonly Segments Man = MeanMan.Segments;

    private static StartPosition Start(PullGeometry pull, double grip) => Solved(Man, pull, At(22.5, grip, pull, Man));

    private static StaticLoads Loads(PullGeometry pull, double grip, double load, double body = 85.5, string table = "winter")
        => StaticSolver.Solve(
            Start(pull, grip), Man, Mass.FromKilograms(body), Mass.FromKilograms(load), ModelFile.Masses(table).Male, pull.Legs, Parameters);

    // Escamilla 2000: hip moment sumo to conventional 512/599; Cholewicki 1991: L4/L5 moment x 0.90, load shear x 0.92.
    [Fact]
    public void V2_Cholewicki_1991_sumo_to_conventional_moment_and_shear_are_met_in_the_outer_half()
    {
        var ratio = new LoadComparison(ComparisonBasis.EqualLoad, Loads(Sumo, 47, 200), Loads(Conventional, 55, 200));
        ratio.L5S1.ShouldBe(0.90, 0.07);
        ratio.LoadShear.ShouldBe(0.92, 0.07);
        ratio.Hip.ShouldBe(512.0 / 599, 0.07);
    }

    // Swinton 2011: with the hex bar lumbar, hip and ankle moments are lower, the knee moment higher.
    [Theory]
    [InlineData(60)]
    [InlineData(140)]
    [InlineData(212)]
    public void V3_Swinton_2011_hex_to_straight_bar_signs_are_met(double load)
    {
        var ratio = new LoadComparison(ComparisonBasis.EqualLoad, Loads(Hex, 60, load, 91.4), Loads(Conventional, 55, load, 91.4));
        ratio.L5S1.ShouldBeLessThan(1);
        ratio.Hip.ShouldBeLessThan(1);
        ratio.Ankle.ShouldBeLessThan(1);
        ratio.Knee.ShouldBeGreaterThan(1);
    }

    // Shank lean and handle line were chosen for this (rules/model.yaml): a fit that must not drift, not an independent check.
    [Theory]
    [InlineData(60)]
    [InlineData(140)]
    [InlineData(180)]
    public void V3_Swinton_2011_hex_bar_hip_to_knee_ratio_of_about_2_is_fitted_up_to_180_kg(double load)
    {
        var hex = Loads(Hex, 60, load, 91.4);
        (hex.Hip / hex.Knee).ShouldBe(2, 1);
    }

    [Fact]
    public void V3_Swinton_2011_hex_bar_hip_to_knee_ratio_is_NOT_met_at_212_kg()
    {
        // 80 % of the study's mean 1RM of 265 kg.
        var hex = Loads(Hex, 60, 212, 91.4);
        (hex.Hip / hex.Knee).ShouldBeInRange(3, 3.2);
    }

    // Not met, and said so in rules/model.yaml: 3-4 +/- 1 was published (secondary source).
    [Theory]
    [InlineData(100, 6, 7.5)]
    [InlineData(212, 11, 13)]
    public void V3_Swinton_2011_straight_bar_hip_to_knee_ratio_of_3_to_4_is_NOT_met(double load, double least, double most)
    {
        var straight = Loads(Conventional, 55, load, 91.4);
        (straight.Hip / straight.Knee).ShouldBeInRange(least, most);
    }

    // Derived band 275-371 N m at 100 kg and 513-760 at 250 kg, +/- 25 %; the model sits at its upper end.
    [Theory]
    [InlineData(100, 275, 371)]
    [InlineData(250, 513, 760)]
    public void V5_moment_at_the_lowest_disc_is_within_25_percent_of_the_derived_band(double load, double low, double high)
        => Loads(Conventional, 55, load).L5S1.NewtonMetres.ShouldBeInRange(low * 0.75, high * 1.25);

    // Cholewicki 1991 (quoted from a secondary source): 988 N m and 17,192 N were the highest of 57 national-level lifters.
    [Fact]
    public void V5_Cholewicki_1991_ceiling_is_not_passed_up_to_300_kg()
    {
        var loads = Loads(Conventional, 55, 300);
        loads.L5S1.NewtonMetres.ShouldBeLessThan(988);
        loads.LowBack.Compression.Newtons.ShouldBeLessThan(17_192);
    }

    // Choe 2021: peak hip moment 3.59 N m/kg a leg at 70 and 85 % of 1RM, 78.1 kg men. A 1RM of twice body mass is an assumption.
    [Fact]
    public void V5_Choe_2021_hip_moment_per_leg_is_within_25_percent()
    {
        var loads = Loads(Conventional, 55, 0.775 * 2 * 78.1, 78.1);
        (loads.HipPerLeg.NewtonMetres / 78.1).ShouldBe(3.59, 3.59 * 0.25);
    }

    // OpenSim's way: a moment is the work of the weights over a small turn about the joint.
    [Fact]
    public void Hip_moment_is_the_change_of_height_of_every_weight_above_it_by_angle()
    {
        const double turn = 1e-6;
        var start = Start(Conventional, 55);
        var table = ModelFile.Masses("winter").Male;
        var body = 85.5 * StaticSolver.StandardGravity;
        var wrist = Man.Metres(SegmentName.WristToGrip);
        var arm = Math.Sqrt(Math.Pow(start.Shoulder.X - start.Hand.X, 2) + Math.Pow(start.Shoulder.Y - start.Hand.Y, 2));
        (double Weight, Point At)[] parts =
        [
            (100 * StaticSolver.StandardGravity, start.Hand),
            (body * 2 * table.Arm.Share, Between(start.Shoulder, start.Hand, table.Arm.Centre * (arm - wrist) / arm)),
            (body * table.TrunkAndHead.Share, Between(start.Hip, start.Shoulder, table.TrunkAndHead.Centre)),
        ];
        var work = parts.Sum(p => p.Weight * (Turned(p.At, start.Hip, turn).Y - Turned(p.At, start.Hip, -turn).Y)) / (2 * turn);
        Loads(Conventional, 55, 100).Hip.NewtonMetres.ShouldBe(work, 1e-3);
    }

    [Fact]
    public void Moment_arms_are_level_distances_of_the_load()
    {
        var start = Start(Conventional, 55);
        var loads = Loads(Conventional, 55, 100);
        loads.HipArm.Metres.ShouldBe(start.Hand.X - start.Hip.X, 1e-12);
        loads.KneeArm.Metres.ShouldBe(start.Hand.X - start.Knee.X, 1e-12);
        loads.AnkleArm.Metres.ShouldBe(start.Hand.X, 1e-12);
        // More load turns each joint by the load's own arm.
        var more = Loads(Conventional, 55, 101);
        (more.Hip - loads.Hip).NewtonMetres.ShouldBe(StaticSolver.StandardGravity * loads.HipArm.Metres, 1e-9);
        (more.L5S1 - loads.L5S1).NewtonMetres.ShouldBe(StaticSolver.StandardGravity * loads.L5S1Arm.Metres, 1e-9);
    }

    // Biomechanics 7: the whole system's centre must lie between heel and ball.
    [Theory]
    [InlineData(20)]
    [InlineData(100)]
    [InlineData(250)]
    public void Body_and_load_balance_over_the_foot(double load)
    {
        var start = Start(Conventional, 55);
        Loads(Conventional, 55, load).CentreAhead.Metres.ShouldBeInRange(start.Heel.X, start.Ball.X);
    }

    // 40 % more extensor arm gave 32 % less compression in a published single-subject model (2023, e3680), here without its other forces.
    [Fact]
    public void A_longer_extensor_arm_lowers_compression_by_about_a_quarter_to_a_third()
    {
        var moment = Loads(Conventional, 55, 68).LowBack;
        var start = Start(Conventional, 55);
        var longer = StaticSolver.Solve(start, Man, Mass.FromKilograms(85.5), Mass.FromKilograms(68), ModelFile.Masses("winter").Male,
            LegUse.Both, Parameters.With("extensor-arm", 0.06 * 1.4));
        (1 - (longer.LowBack.Compression / moment.Compression)).ShouldBeInRange(0.24, 0.36);
    }

    [Fact]
    public void The_two_mass_tables_agree_on_the_hip_within_five_percent()
    {
        var winter = Loads(Conventional, 55, 100);
        var deLeva = Loads(Conventional, 55, 100, table: "de-leva");
        (deLeva.Hip / winter.Hip).ShouldBe(1, 0.05);
        (deLeva.L5S1 / winter.L5S1).ShouldBe(1, 0.05);
    }

    [Fact]
    public void A_split_stance_gives_the_working_leg_its_share()
    {
        var both = Loads(Hex, 60, 60);
        var split = Loads(Hex with { Legs = LegUse.Split }, 60, 60);
        both.HipPerLeg.ShouldBe(both.Hip * 0.5);
        split.HipPerLeg.ShouldBe(split.Hip * (Parameters.SplitWorkingShare / 100));
    }

    [Fact]
    public void A_comparison_at_equal_load_refuses_unequal_loads()
        => Should.Throw<ArgumentException>(() => new LoadComparison(ComparisonBasis.EqualLoad, Loads(Sumo, 47, 100), Loads(Conventional, 55, 120)));

    [Fact]
    public void Knee_moments_of_a_sumo_stance_are_marked_unreadable()
    {
        Loads(Conventional, 55, 100).KneeCanBeRead.ShouldBeTrue();
        Loads(Sumo, 47, 100).KneeCanBeRead.ShouldBeFalse();
    }

    private static Point Between(Point a, Point b, double share) => new(a.X + ((b.X - a.X) * share), a.Y + ((b.Y - a.Y) * share));

    private static Point Turned(Point p, Point about, double angle)
    {
        var x = p.X - about.X;
        var y = p.Y - about.Y;
        return new Point(about.X + (x * Math.Cos(angle)) - (y * Math.Sin(angle)), about.Y + (x * Math.Sin(angle)) + (y * Math.Cos(angle)));
    }
}
