using HingeSelector.Body;
using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>How the body estimate reads as a fact.</summary>
internal static class BodyWords
{
    private const int Measured = 0;
    private const int Survey = 1;
    private const int Mixed = 2;
    private const int NotKnown = 3;

    /// <summary>The value of <c>body-basis</c>.</summary>
    public static FactValue Basis(BodyEstimate body) => FactValue.Choice(body switch
    {
        KnownBody { Basis: BodyBasis.Measured } => Measured,
        KnownBody { Basis: BodyBasis.Survey } => Survey,
        KnownBody => Mixed,
        _ => NotKnown,
    });

    /// <summary>Why the body is not known, and what would help; null when it is known.</summary>
    public static string? WhyNotKnown(BodyEstimate body) => body is not BodyNotKnown unknown ? null : unknown.Reason switch
    {
        BodyUnknownReason.NoStature => "Stature is not known, so no start position can be worked out: measure stature, or find the held height at the bar.",
        BodyUnknownReason.NoSex => "Sex is not known, so the survey cannot be used for segment lengths: enter it, measure the four segments, or find the held height.",
        BodyUnknownReason.NoAge => "Age is not known, so the survey cannot be used for segment lengths: enter it, measure the four segments, or find the held height.",
        BodyUnknownReason.OutsideSurveyAge => "The survey behind the segment lengths covers ages 17 to 58 only: measure the four segments, or find the held height.",
        BodyUnknownReason.OutsideSurveyStature => "The survey behind the segment lengths does not cover this stature: measure the four segments, or find the held height.",
        _ => "With a limb difference the survey says nothing about this body: measure the four segments of the working side, or find the held height.",
    };
}
