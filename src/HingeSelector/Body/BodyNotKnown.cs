namespace HingeSelector.Body;

/// <summary>Segments can't be had from what is known: ask for measured segments or for the held height.</summary>
/// <param name="Reason">What stands in the way.</param>
public sealed record BodyNotKnown(BodyUnknownReason Reason) : BodyEstimate;
