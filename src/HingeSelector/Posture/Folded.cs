namespace HingeSelector.Posture;

/// <summary>The links would have to fold into one another.</summary>
/// <param name="Reason">What meets what.</param>
public sealed record Folded(FoldedReason Reason) : PostureOutcome;
