using HingeSelector.Body;
using HingeSelector.Quantities;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Body;

public sealed class BodyEstimatorTests
{
    private static readonly BodyMeasures Woman = new() { Sex = Sex.Female, AgeYears = 20, Stature = Length.FromMetres(1.70), Mass = Mass.FromKilograms(70) };

    private static readonly BodyMeasures Measured = new()
    {
        Thigh = Cm(42),
        Shank = Cm(43),
        TrunkToAcromion = Cm(55),
        ArmToGrip = Cm(70),
    };

    // 2012 survey, table 2.4 of the reference: men's shank 418.8, thigh 409.3, trunk 539.8, arm to grip 684.3 mm at 1756.2 mm.
    [Theory]
    [InlineData(SegmentName.Shank, 0.4188)]
    [InlineData(SegmentName.Thigh, 0.4093)]
    [InlineData(SegmentName.TrunkToAcromion, 0.5398)]
    [InlineData(SegmentName.ArmToGrip, 0.6843)]
    [InlineData(SegmentName.BiacromialBreadth, 0.4157)]
    public void Survey_2012_mean_man_has_the_surveys_mean_segments(SegmentName name, double metres)
        => Adult(Sex.Male, 1.7562).Segments.Metres(name).ShouldBe(metres, 0.0005);

    [Fact]
    public void Stature_and_sex_inside_the_survey_give_segments_with_the_scatter_of_people()
    {
        var body = Estimate(Woman).ShouldBeOfType<KnownBody>();
        body.Basis.ShouldBe(BodyBasis.Survey);
        body.Segments[SegmentName.Thigh].StandardError.Metres.ShouldBe(1.70 * 0.0107, 1e-9);
        body.Segments.Correlation(SegmentName.TrunkToAcromion, SegmentName.Thigh).ShouldBe(-0.64);
        body.Mass.ShouldBe(Mass.FromKilograms(70));
    }

    [Fact]
    public void A_measured_segment_replaces_the_ratio_and_its_error()
    {
        var body = Estimate(Woman with { Thigh = Cm(44) }).ShouldBeOfType<KnownBody>();
        body.Basis.ShouldBe(BodyBasis.MeasuredAndSurvey);
        body.Segments[SegmentName.Thigh].ShouldBe(new SegmentLength(Cm(44), Parameters.MeasuredSegmentError));
        body.Segments.Correlation(SegmentName.TrunkToAcromion, SegmentName.Thigh).ShouldBe(0);
        body.Segments.Correlation(SegmentName.ArmToGrip, SegmentName.Shank).ShouldBe(0.50);
    }

    public static TheoryData<double?, double?, Sex, bool, BodyUnknownReason> NotKnown => new()
    {
        { null, 20, Sex.Female, false, BodyUnknownReason.NoStature },
        { 1.7, 20, Sex.Unknown, false, BodyUnknownReason.NoSex },
        { 1.7, null, Sex.Female, false, BodyUnknownReason.NoAge },
        { 1.7, 16.9, Sex.Female, false, BodyUnknownReason.OutsideSurveyAge },
        { 1.7, 59, Sex.Female, false, BodyUnknownReason.OutsideSurveyAge },
        { 1.9, 20, Sex.Female, false, BodyUnknownReason.OutsideSurveyStature },
        { 2.02, 20, Sex.Male, false, BodyUnknownReason.OutsideSurveyStature },
        { 1.7, 20, Sex.Female, true, BodyUnknownReason.LimbDifference },
    };

    [Theory]
    [MemberData(nameof(NotKnown))]
    public void Outside_the_survey_nothing_is_made_up(double? stature, double? age, Sex sex, bool limb, BodyUnknownReason reason)
        => Estimate(new BodyMeasures
        {
            Stature = stature is { } s ? Length.FromMetres(s) : null,
            AgeYears = age,
            Sex = sex,
            LimbDifference = limb,
        }).ShouldBe(new BodyNotKnown(reason));

    [Fact]
    public void Measured_segments_carry_an_athlete_outside_the_survey()
    {
        var youth = Measured with { Stature = Length.FromMetres(1.7), AgeYears = 15, Sex = Sex.Female, LimbDifference = true };
        Estimate(youth).ShouldBeOfType<KnownBody>().Basis.ShouldBe(BodyBasis.Measured);
        // Without stature and sex the small lengths follow legs and trunk.
        var body = Estimate(Measured).ShouldBeOfType<KnownBody>();
        body.Segments.Metres(SegmentName.FootLength).ShouldBeInRange(0.25, 0.30);
    }

    private static BodyEstimate Estimate(BodyMeasures measures) => BodyEstimator.Estimate(measures, ModelFile.Survey, Parameters);
}
