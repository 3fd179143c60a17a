namespace HingeSelector.Posture;

/// <summary>
/// What each joint has to spare in a position; null where nothing was measured. Two-legged pulls read the worse side, split
/// ones the working side.
/// </summary>
/// <param name="HipFlexion">Thigh against pelvis.</param>
/// <param name="HipAbduction">Thigh out to the side.</param>
/// <param name="TurnOut">Turn-out that the hips must supply.</param>
/// <param name="Dorsiflexion">
/// Shank over the foot, only where the shin is free: stiff ankles change nothing at a bar that stops the shin. It never decides
/// whether a set-up fits: who lacks it keeps the shanks more upright, and the hip angle hardly changes.
/// </param>
public sealed record Margins(Spare? HipFlexion, Spare? HipAbduction, Spare? TurnOut, Spare? Dorsiflexion);
