using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>What the survey says of one sex.</summary>
/// <param name="ShortestStature">The shortest person measured.</param>
/// <param name="TallestStature">The tallest person measured.</param>
/// <param name="Ratios">Each segment as a share of stature.</param>
/// <param name="Correlations">How the shares of two segments go together.</param>
public sealed record SexSurvey(
    Length ShortestStature,
    Length TallestStature,
    IReadOnlyDictionary<SegmentName, SurveyRatio> Ratios,
    IReadOnlyDictionary<SegmentPair, double> Correlations);
