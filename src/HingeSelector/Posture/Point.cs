namespace HingeSelector.Posture;

/// <summary>A place in the side view.</summary>
/// <param name="X">Metres ahead of the ankle.</param>
/// <param name="Y">Metres above the floor.</param>
public readonly record struct Point(double X, double Y);
