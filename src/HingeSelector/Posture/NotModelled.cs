namespace HingeSelector.Posture;

/// <summary>The planar model has nothing to say of this pull.</summary>
/// <param name="Reason">Why.</param>
public sealed record NotModelled(NotModelledReason Reason) : PostureOutcome;
