namespace HingeSelector.Body;

/// <summary>Two segments whose errors go together.</summary>
/// <param name="First">One of them.</param>
/// <param name="Second">The other.</param>
public readonly record struct SegmentPair(SegmentName First, SegmentName Second);
