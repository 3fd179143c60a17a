using CsCheck;
using HingeSelector.Body;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Tests.Body;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Posture;

/// <summary>What must hold for every body inside the survey, on demand (spare degrees are not monotone).</summary>
public sealed class PosturePropertiesTests
{
    private const int Tries = 4_000;

    private static readonly Gen<Segments> Bodies =
        from sex in OneOf(Sex.Female, Sex.Male)
        from stature in Gen.Double[sex == Sex.Female ? 1.435 : 1.491, sex == Sex.Female ? 1.829 : 1.98]
        from shifts in Gen.Double[-2, 2].Array[Segments.Count]
        select Shifted(sex, stature, shifts);

    private static readonly Gen<PullGeometry> StraightBars = OneOf(Conventional, Sumo);

    private static readonly Gen<PullGeometry> Pulls = OneOf(Conventional, Sumo, Hex, Romanian);

    // Not below: a very low bar in a wide stance (seen at 11.9 cm in sumo) lies where the shin no longer leads the hip.
    [Fact]
    public void Raising_the_bar_never_raises_hip_demand_from_18_cm_upwards()
        => Gen.Select(Bodies, Pulls, Gen.Double[18, 70], Gen.Double[0.1, 15], Gen.Double[38, 100]).Sample((body, pull, height, more, grip) =>
        {
            var low = Solve(body, pull, height, grip);
            var high = Solve(body, pull, height + more, grip);
            return low is not StartPosition a || high is not StartPosition b || b.HipDemand.Degrees <= a.HipDemand.Degrees + 1e-9;
        }, iter: Tries);

    [Fact]
    public void A_wider_grip_never_lowers_hip_demand_beyond_shoulder_joint_spacing()
        => Gen.Select(Bodies, Pulls, Gen.Double[18, 60], Gen.Double[0, 60], Gen.Double[0.1, 20]).Sample((body, pull, height, beyond, more) =>
        {
            var spacing = 100 * Parameters.ShoulderSpacingRatio * body.Metres(SegmentName.BiacromialBreadth);
            var narrow = Solve(body, pull, height, spacing + beyond);
            var wide = Solve(body, pull, height, spacing + beyond + more);
            return narrow is not StartPosition a || wide is not StartPosition b || b.HipDemand.Degrees >= a.HipDemand.Degrees - 1e-9;
        }, iter: Tries);

    [Fact]
    public void A_higher_sole_equals_a_lower_bar()
        => Gen.Select(Bodies, Pulls, Gen.Double[22, 60], Gen.Double[0, 4], Gen.Double[45, 90]).Sample((body, pull, height, sole, grip) =>
        {
            var shod = PostureSolver.Solve(body, pull, At(height, grip, pull, body, sole), Parameters);
            var bare = PostureSolver.Solve(body, pull, At(height - sole, grip, pull, body), Parameters);
            return (shod, bare) switch
            {
                (StartPosition a, StartPosition b) => Math.Abs((a.HipDemand - b.HipDemand).Degrees) < 1e-9
                    && Math.Abs(a.HipHeight.Metres - b.HipHeight.Metres - (sole / 100)) < 1e-12
                    && Math.Abs((a.Travel - b.Travel).Metres) < 1e-12,
                _ => shod.Equals(bare),
            };
        }, iter: Tries);

    [Fact]
    public void A_longer_arm_acts_like_a_higher_bar_at_equal_shank()
        // Biomechanics 7: taller bar and longer arms act identically, once the shank is held.
        => Bodies.Sample(body =>
        {
            var upright = Parameters.With("shank-lean-limit", 0);
            var block = Solve(body, Conventional, 32, 44, upright) as StartPosition;
            var arm = body.With(SegmentName.ArmToGrip, body[SegmentName.ArmToGrip].Value + Cm(2));
            var longer = Solve(arm, Conventional, 30, 44, upright) as StartPosition;
            return block is null || longer is null || Math.Abs((block.HipDemand - longer.HipDemand).Degrees) < 0.15;
        }, iter: Tries);

    [Fact]
    public void Nothing_is_ever_not_a_number()
        => Gen.Select(Bodies, Pulls, Gen.Double[-50, 150], Gen.Double[0, 220], Gen.Double[0, 60]).Sample((body, pull, height, grip, turnOut) =>
        {
            var setUp = At(height, grip, pull, body) with { TurnOut = Deg(turnOut) };
            return PostureSolver.Solve(body, pull, setUp, Parameters) is not StartPosition p || Numbers(p).All(double.IsFinite);
        }, iter: Tries);

    [Fact]
    public void Left_and_right_exchanged_give_the_same_margins()
        => Gen.Select(Bodies, Pulls, Sides, Sides, Gen.Double[18, 45]).Sample((body, pull, left, right, height) =>
        {
            var ranges = new RangeOfMotion(left, right);
            var setUp = At(height, 55, pull, body);
            var here = new MarginFinder(body, ranges, pull, Parameters).Find(setUp);
            var there = new MarginFinder(body, ranges.Mirrored(), pull, Parameters).Find(setUp);
            return here?.HipFlexion?.Value == there?.HipFlexion?.Value && here?.HipAbduction?.Value == there?.HipAbduction?.Value;
        }, iter: 500);

    [Fact]
    public void More_range_never_raises_the_first_try()
        => Gen.Select(Bodies, StraightBars, Gen.Double[40, 100], Gen.Double[85, 140], Gen.Double[0, 15], Gen.Double[0, 15]).Sample((body, pull, raise, bent, moreRaise, moreBent) =>
        {
            var request = Request(HeightRequest.LowestThatFits);
            var estimate = new KnownBody(body, BodyBasis.Survey, Sex.Male, null);
            var poor = SetUpSearch.Choose(estimate, Hips(raise, bent), pull, request, Parameters);
            var rich = SetUpSearch.Choose(estimate, Hips(raise + moreRaise, bent + moreBent), pull, request, Parameters);
            return poor.Reasons.Contains(ChoiceReason.NothingFits) || rich.FirstTry.HandHeight <= poor.FirstTry.HandHeight;
        }, iter: 150);

    [Fact]
    public void Stiff_ankles_alone_change_nothing_at_a_straight_bar()
        => Gen.Select(Bodies, StraightBars, Gen.Double[40, 100], Gen.Double[85, 140], Gen.Double[0, 45]).Sample((body, pull, raise, bent, ankle) =>
        {
            var hips = Hips(raise, bent).Left;
            var stiff = hips with { Dorsiflexion = new AngleMeasure(Deg(ankle), Deg(2)) };
            var estimate = new KnownBody(body, BodyBasis.Survey, Sex.Male, null);
            var request = Request(HeightRequest.LowestThatFits);
            var without = SetUpSearch.Choose(estimate, Both(hips), pull, request, Parameters);
            var with = SetUpSearch.Choose(estimate, Both(stiff), pull, request, Parameters);
            return with.FirstTry == without.FirstTry && with.Fit == without.Fit && Equals(with.Margins, without.Margins);
        }, iter: 150);

    [Fact]
    public void The_unit_in_which_a_length_was_written_changes_nothing()
        => Gen.Select(Gen.Double[150, 190], Gen.Double[22, 40]).Sample((stature, height) =>
        {
            var inch = Unit.Find("in")!.Factor;
            var metric = Adult(Sex.Male, stature / 100).Segments;
            var imperial = Adult(Sex.Male, stature / 100 / inch * inch).Segments;
            var a = Solve(metric, Conventional, height, 55) as StartPosition;
            var b = Solve(imperial, Conventional, height / 100 / inch * inch * 100, 55) as StartPosition;
            return a is null || b is null || Math.Abs((a.HipDemand - b.HipDemand).Degrees) < 1e-9;
        }, iter: 500);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<SideRange> Sides =>
        from raise in Gen.Double[40, 110]
        from bent in Gen.Double[80, 140]
        from abduction in Gen.Double[20, 60]
        select Hips(raise, bent).Left with { HipAbduction = new AngleMeasure(Deg(abduction), Deg(3)) };

    private static PostureOutcome Solve(Segments body, PullGeometry pull, double height, double grip, ModelParameters? parameters = null)
        => PostureSolver.Solve(body, pull, At(height, grip, pull, body), parameters ?? Parameters);

    private static Segments Shifted(Sex sex, double stature, double[] shifts)
    {
        var people = ModelFile.Survey.For(sex);
        return new Segments(people.Ratios.ToDictionary(
            r => r.Key,
            r => new SegmentLength(
                Length.FromMetres(stature * (r.Value.Mean + (shifts[(int)r.Key] * r.Value.Deviation))),
                Length.FromMetres(stature * r.Value.Deviation))), people.Correlations);
    }

    private static IEnumerable<double> Numbers(StartPosition p) =>
    [
        p.Knee.X, p.Knee.Y, p.Hip.X, p.Hip.Y, p.Shoulder.X, p.Shoulder.Y, p.Hand.X, p.Hand.Y, p.TrunkAboveLevel.Degrees,
        p.ThighAboveLevel.Degrees, p.ShankForward.Degrees, p.KneeFlexion.Degrees, p.TrunkThighFlexion.Degrees, p.HipDemand.Degrees,
        p.HipAbductionDemand.Degrees, p.Dorsiflexion.Degrees, p.ShoulderAbduction.Degrees, p.ArmToKneeClearance.Metres,
        p.TrunkClearance.Metres, p.Travel.Metres,
    ];
}
