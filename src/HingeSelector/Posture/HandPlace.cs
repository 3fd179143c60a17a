using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Where a hand's middle finger lies on the bar.</summary>
/// <param name="FromMiddle">From the middle of the bar.</param>
/// <param name="OutsideRing">Outside the ring mark; negative inside it, null when the bar has none.</param>
/// <param name="FromCollar">From the inner collar, towards the middle.</param>
/// <param name="HandFits">The whole hand lies on the bar, clear of the collar.</param>
public readonly record struct HandPlace(Length FromMiddle, Length? OutsideRing, Length FromCollar, bool HandFits);
