namespace HingeSelector.Posture;

/// <summary>The body can't bring hands and feet to where the set-up has them.</summary>
/// <param name="Reason">What is too short.</param>
public sealed record Unreachable(UnreachableReason Reason) : PostureOutcome;
