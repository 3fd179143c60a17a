using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>A measured hip flexion.</summary>
/// <param name="Value">The reading.</param>
/// <param name="StandardError">One standard error of measurement.</param>
/// <param name="Pelvis">Whether the pelvis was kept still.</param>
public readonly record struct HipFlexionMeasure(Angle Value, Angle StandardError, PelvisHeld Pelvis);
