namespace HingeSelector.Recommending;

/// <summary>Another height or grip that would do, and what it costs.</summary>
/// <param name="Metres">Height of the hands or width of the grip, m.</param>
/// <param name="Cost">Weighted points less than the first try.</param>
public readonly record struct AlternativeSetUp(double Metres, int Cost);
