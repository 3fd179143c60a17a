using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>Turns what is known of a body into segments: measured ones first, survey ratios for adults inside the survey.</summary>
public static class BodyEstimator
{
    private static readonly SegmentName[] MainSegments =
        [SegmentName.Thigh, SegmentName.Shank, SegmentName.TrunkToAcromion, SegmentName.ArmToGrip];

    /// <summary>The segments, or the reason why there are none. Never extrapolates beyond the survey.</summary>
    public static BodyEstimate Estimate(BodyMeasures measures, SurveyTable survey, ModelParameters parameters)
    {
        if (!measures.AllMainSegmentsMeasured && WhyNot(measures, survey) is { } reason)
            return new BodyNotKnown(reason);

        var people = survey.For(measures.Sex);
        var stature = measures.Stature?.Metres ?? StatureFromLegsAndTrunk(measures, people);
        var lengths = new Dictionary<SegmentName, SegmentLength>();
        var correlations = new Dictionary<SegmentPair, double>(people.Correlations);
        var measured = 0;
        foreach (var (name, ratio) in people.Ratios)
        {
            if (Measured(measures, name) is { } value)
            {
                lengths[name] = new SegmentLength(value, parameters.MeasuredSegmentError);
                measured++;
                // The error of a tape has nothing to do with how people differ.
                foreach (var pair in people.Correlations.Keys.Where(p => p.First == name || p.Second == name))
                    correlations.Remove(pair);
            }
            else
            {
                lengths[name] = new SegmentLength(Length.FromMetres(stature * ratio.Mean), Length.FromMetres(stature * ratio.Deviation));
            }
        }

        var basis = measured == MainSegments.Length ? BodyBasis.Measured : measured == 0 ? BodyBasis.Survey : BodyBasis.MeasuredAndSurvey;
        return new KnownBody(new Segments(lengths, correlations), basis, measures.Sex, measures.Mass);
    }

    private static BodyUnknownReason? WhyNot(BodyMeasures measures, SurveyTable survey)
    {
        if (measures.LimbDifference)
            return BodyUnknownReason.LimbDifference;
        if (measures.Stature is not { } stature)
            return BodyUnknownReason.NoStature;
        if (measures.Sex == Sex.Unknown)
            return BodyUnknownReason.NoSex;
        if (measures.AgeYears is not { } age)
            return BodyUnknownReason.NoAge;
        // Ages are counted in whole years: 58 lasts until the 59th birthday.
        if (age < survey.YoungestYears || age >= survey.OldestYears + 1)
            return BodyUnknownReason.OutsideSurveyAge;
        var people = survey.For(measures.Sex);
        return stature < people.ShortestStature || stature > people.TallestStature ? BodyUnknownReason.OutsideSurveyStature : null;
    }

    private static Length? Measured(BodyMeasures measures, SegmentName name) => name switch
    {
        SegmentName.Thigh => measures.Thigh,
        SegmentName.Shank => measures.Shank,
        SegmentName.TrunkToAcromion => measures.TrunkToAcromion,
        SegmentName.ArmToGrip => measures.ArmToGrip,
        _ => null,
    };

    /// <summary>Stature that scales the small lengths of an athlete whose main segments were measured but whose stature was not.</summary>
    private static double StatureFromLegsAndTrunk(BodyMeasures measures, SexSurvey people)
    {
        var share = people.Ratios[SegmentName.Shank].Mean + people.Ratios[SegmentName.Thigh].Mean + people.Ratios[SegmentName.TrunkToAcromion].Mean;
        return (measures.Shank!.Value.Metres + measures.Thigh!.Value.Metres + measures.TrunkToAcromion!.Value.Metres) / share;
    }
}
