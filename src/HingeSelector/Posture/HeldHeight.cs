using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>The lowest height at which a coach saw the athlete hold the start position, confirmed at the bar.</summary>
/// <param name="Height">Hand height above the floor.</param>
/// <param name="Grip">Between the middle fingers; it speaks for this grip only.</param>
/// <param name="Stance">Between the ankles; null when the variant's own stance was used.</param>
public sealed record HeldHeight(Length Height, Length Grip, Length? Stance);
