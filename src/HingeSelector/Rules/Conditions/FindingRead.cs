namespace HingeSelector.Rules.Conditions;

/// <summary>A finding that a condition looks at.</summary>
/// <param name="Finding">Index of the finding.</param>
/// <param name="Present">Whether presence is asked; otherwise absence.</param>
public sealed record FindingRead(int Finding, bool Present);
