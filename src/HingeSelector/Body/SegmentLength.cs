using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>A length of the body and how far off it may be.</summary>
/// <param name="Value">The length.</param>
/// <param name="StandardError">One standard deviation of the error: of the tape, or of people about the survey's ratio.</param>
public readonly record struct SegmentLength(Length Value, Length StandardError);
