using HingeSelector.Body;
using HingeSelector.Posture;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Posture;

public sealed class SetUpSearchTests
{
    private static SetUpChoice Choose(RangeOfMotion ranges, SetUpRequest request, PullGeometry? pull = null, BodyEstimate? body = null)
        => SetUpSearch.Choose(body ?? MeanMan, ranges, pull ?? Conventional, request, Parameters);

    [Fact]
    public void The_standard_height_is_kept_and_said_not_to_fit()
    {
        var choice = Choose(Hips(45, 90), Request(HeightRequest.Standard));
        choice.FirstTry.HandHeight.ShouldBe(Cm(22.5));
        choice.Fit.ShouldBe(Fit.DoesNotFit);
        choice.Heights.Fitting.ShouldBeNull();
        choice.ComputedLowest.ShouldNotBeNull().ShouldBeGreaterThan(Cm(22.5));
        choice.Margins!.HipFlexion!.Value.Value.Degrees.ShouldBeLessThan(0);
    }

    [Fact]
    public void The_lowest_that_fits_is_the_first_height_from_below_with_degrees_to_spare()
    {
        var ranges = Hips(45, 90);
        var choice = Choose(ranges, Request(HeightRequest.LowestThatFits));
        choice.Fit.ShouldBe(Fit.Fits);
        choice.Reasons.ShouldContain(ChoiceReason.RaisedAboveStandard);
        choice.ComputedLowest.ShouldBe(choice.FirstTry.HandHeight);
        var below = RoomHeights.Last(h => h < choice.FirstTry.HandHeight);
        var finder = new MarginFinder(MeanMan.Segments, ranges, Conventional, Parameters);
        finder.Find(choice.FirstTry)!.HipFlexion!.Value.Value.Degrees.ShouldBeGreaterThanOrEqualTo(0);
        finder.Find(choice.FirstTry with { HandHeight = below })!.HipFlexion!.Value.Value.Degrees.ShouldBeLessThan(0);
        choice.Heights.Fitting!.From.ShouldBe(choice.FirstTry.HandHeight);
        choice.Heights.Widened!.From.ShouldBeLessThanOrEqualTo(choice.Heights.Fitting.From);
        choice.Heights.Widened.To.ShouldBeGreaterThanOrEqualTo(choice.Heights.Fitting.To);
    }

    [Fact]
    public void An_ample_hip_leaves_the_bar_where_it_is()
        => Choose(Hips(95, 135), Request(HeightRequest.LowestThatFits)).FirstTry.HandHeight.ShouldBe(Cm(22.5));

    [Fact]
    public void At_least_a_height_starts_there()
    {
        var choice = Choose(Hips(95, 135), Request(HeightRequest.AtLeast(Cm(31))));
        choice.FirstTry.HandHeight.ShouldBe(Cm(32.5));
        choice.Heights.Fitting!.From.ShouldBe(Cm(22.5));
    }

    /// <summary>Raising the bar straightens the knee and gives up hamstring length: short hamstrings fit, then fail, then fit.</summary>
    [Fact]
    public void Runs_of_fitting_heights_may_lie_apart()
    {
        var heights = Enumerable.Range(0, 60).Select(i => Cm(18 + (0.5 * i))).ToList();
        var tall = Adult(Sex.Male, 1.90);
        var found = Enumerable.Range(60, 80).Select(half => Choose(
            Hips(half / 2.0, 125), Request(HeightRequest.LowestThatFits) with { Heights = heights, StandardHeight = Cm(18) }, body: tall))
            .Where(c => c.Fit == Fit.Fits && c.Heights.Further.Count > 0).ToList();
        foreach (var choice in found)
        {
            choice.Heights.Further.ShouldAllBe(r => r.From > choice.Heights.Fitting!.To);
            choice.FirstTry.HandHeight.ShouldBe(choice.Heights.Fitting!.From);
        }

        found.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_hip_not_measured_keeps_the_standard_height_and_leaves_the_fit_open()
    {
        var choice = Choose(RangeOfMotion.Nothing, Request(HeightRequest.LowestThatFits, GripRequest.WidestThatFits));
        choice.FirstTry.HandHeight.ShouldBe(Cm(22.5));
        choice.FirstTry.Grip.ShouldBe(Cm(55));
        choice.Fit.ShouldBe(Fit.Unknown);
        choice.Heights.Fitting.ShouldBeNull();
        choice.ComputedLowest.ShouldBeNull();
        choice.Reasons.ShouldContain(ChoiceReason.HipFlexionNotMeasured);
    }

    [Fact]
    public void Abduction_not_measured_leaves_a_sumo_stance_open_and_a_hip_wide_one_decided()
    {
        var sumo = Choose(Hips(95, 135), Request(HeightRequest.Standard) with { StandardGrip = Cm(47), Grips = [Cm(47)] }, Sumo);
        sumo.Fit.ShouldBe(Fit.Unknown);
        sumo.Reasons.ShouldContain(ChoiceReason.AbductionNotMeasured);
        Choose(Hips(95, 135), Request(HeightRequest.Standard)).Fit.ShouldBe(Fit.Fits);
    }

    [Fact]
    public void Abduction_and_turn_out_that_run_out_do_not_fit()
    {
        var request = Request(HeightRequest.Standard) with { StandardGrip = Cm(47), Grips = [Cm(47)] };
        var hips = Hips(95, 135).Left with { HipAbduction = new AngleMeasure(Deg(60), Deg(3)) };
        Choose(Both(hips), request, Sumo).Fit.ShouldBe(Fit.Fits);
        Choose(Both(hips with { HipAbduction = new AngleMeasure(Deg(30), Deg(3)) }), request, Sumo).Fit.ShouldBe(Fit.DoesNotFit);
        Choose(Both(hips with { HipExternalRotation = new AngleMeasure(Deg(20), Deg(3)) }), request, Sumo).Fit.ShouldBe(Fit.DoesNotFit);
    }

    [Fact]
    public void Two_legged_pulls_read_the_worse_side_and_split_ones_the_working_side()
    {
        var good = Hips(95, 135).Left;
        var poor = Hips(45, 90).Left;
        var split = Conventional with { Legs = LegUse.Split };
        var setUp = At(22.5, 55, Conventional, MeanMan.Segments);
        Side HipSide(RangeOfMotion r, PullGeometry p) => new MarginFinder(MeanMan.Segments, r, p, Parameters).Find(setUp)!.HipFlexion!.Value.Side;
        HipSide(new RangeOfMotion(good, poor), Conventional).ShouldBe(Side.Right);
        HipSide(new RangeOfMotion(good, poor, Side.Left), split).ShouldBe(Side.Left);
        HipSide(new RangeOfMotion(good, poor), split).ShouldBe(Side.Right);
    }

    [Fact]
    public void The_widest_grip_that_fits_is_as_wide_as_the_hips_allow()
    {
        var request = Request(HeightRequest.Standard, GripRequest.WidestThatFits);
        var short_ = Choose(Hips(50, 106), request);
        var ample = Choose(Hips(95, 140), request);
        short_.Fit.ShouldBe(Fit.Fits);
        ample.FirstTry.Grip.ShouldBe(Cm(100));
        short_.FirstTry.Grip.ShouldBeLessThan(ample.FirstTry.Grip);
        short_.Grips.Fitting!.To.ShouldBe(short_.FirstTry.Grip);
        Choose(Hips(50, 106), Request(HeightRequest.Standard, GripRequest.NarrowestThatFits)).FirstTry.Grip.ShouldBe(Cm(55));
    }

    [Fact]
    public void When_nothing_fits_the_height_with_the_most_to_spare_is_shown_and_said()
    {
        var choice = Choose(Hips(5, 10), Request(HeightRequest.LowestThatFits));
        choice.Fit.ShouldBe(Fit.DoesNotFit);
        choice.Reasons.ShouldContain(ChoiceReason.NothingFits);
        choice.FirstTry.HandHeight.ShouldBeGreaterThan(Cm(45));
    }

    [Fact]
    public void A_held_height_outranks_the_computed_one_for_that_grip_and_both_are_shown()
    {
        var request = Request(HeightRequest.LowestThatFits) with { Held = new HeldHeight(Cm(35), Cm(55), null) };
        var choice = Choose(Hips(95, 135), request);
        choice.FirstTry.HandHeight.ShouldBe(Cm(35));
        choice.ComputedLowest.ShouldBe(Cm(22.5));
        choice.HeldLessComputed!.Value.Centimetres.ShouldBe(12.5, 1e-9);
        choice.Reasons.ShouldContain(ChoiceReason.HeldHeightDecides);

        var lower = Choose(Hips(45, 90), request with { Held = new HeldHeight(Cm(22.5), Cm(55), null) });
        lower.FirstTry.HandHeight.ShouldBe(Cm(22.5));
        lower.Fit.ShouldBe(Fit.Fits);
        lower.ComputedFit.ShouldBe(Fit.DoesNotFit);
        lower.HeldLessComputed!.Value.Metres.ShouldBeLessThan(0);
    }

    [Fact]
    public void A_held_height_for_another_grip_or_stance_decides_nothing()
    {
        foreach (var held in (HeldHeight[])[new(Cm(35), Cm(75), null), new(Cm(35), Cm(55), Cm(60))])
        {
            var choice = Choose(Hips(95, 135), Request(HeightRequest.LowestThatFits) with { Held = held });
            choice.FirstTry.HandHeight.ShouldBe(Cm(22.5));
            choice.Held.ShouldBeNull();
            choice.Reasons.ShouldContain(ChoiceReason.HeldHeightForAnotherSetUp);
        }
    }

    [Fact]
    public void Without_a_body_the_held_height_counts_or_the_first_step_is_raised_and_says_why()
    {
        var unknown = new BodyNotKnown(BodyUnknownReason.OutsideSurveyAge);
        var raised = Choose(Hips(95, 135), Request(HeightRequest.Standard), body: unknown);
        raised.FirstTry.HandHeight.ShouldBe(Cm(35));
        raised.Fit.ShouldBe(Fit.Unknown);
        raised.BodyUnknown.ShouldBe(BodyUnknownReason.OutsideSurveyAge);
        raised.Reasons.ShouldContain(ChoiceReason.BodyNotKnown);

        var held = Choose(Hips(95, 135), Request(HeightRequest.Standard) with { Held = new HeldHeight(Cm(29), Cm(60), null) }, body: unknown);
        held.FirstTry.HandHeight.ShouldBe(Cm(30));
        held.FirstTry.Grip.ShouldBe(Cm(60));
        held.Fit.ShouldBe(Fit.Fits);
    }

    [Fact]
    public void A_room_without_the_standard_height_says_so_and_takes_the_nearest()
    {
        var choice = Choose(Hips(95, 135), Request(HeightRequest.Standard) with { StandardHeight = Cm(21) });
        choice.FirstTry.HandHeight.ShouldBe(Cm(22.5));
        choice.Reasons.ShouldContain(ChoiceReason.RoomLacksStandardHeight);
        Choose(Hips(95, 135), Request(HeightRequest.AtLeast(Cm(80)))).Reasons.ShouldContain(ChoiceReason.RoomTooLow);
    }

    [Fact]
    public void Dorsiflexion_is_read_only_where_the_shin_is_free_and_never_decides()
    {
        var side = Hips(95, 135).Left with { Dorsiflexion = new AngleMeasure(Deg(5), Deg(2)) };
        var request = Request(HeightRequest.Standard) with { StandardGrip = Cm(60), Grips = [Cm(60)] };
        var hex = Choose(Both(side), request, Hex);
        hex.Margins!.Dorsiflexion!.Value.Value.Degrees.ShouldBe(5 - Parameters.FreeShankLean, 1e-6);
        hex.Fit.ShouldBe(Fit.Fits);
        Choose(Both(side), Request(HeightRequest.Standard)).Margins!.Dorsiflexion.ShouldBeNull();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Heights_that_do_not_ascend_are_refused(bool empty)
        => Should.Throw<ArgumentException>(() => Choose(
            Hips(95, 135), Request(HeightRequest.Standard) with { Heights = empty ? [] : [Cm(30), Cm(25)] }));
}
