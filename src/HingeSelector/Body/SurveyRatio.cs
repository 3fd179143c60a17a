namespace HingeSelector.Body;

/// <summary>A length as a share of stature, over the people of a survey.</summary>
/// <param name="Mean">The mean share.</param>
/// <param name="Deviation">The standard deviation of people about it.</param>
public readonly record struct SurveyRatio(double Mean, double Deviation);
