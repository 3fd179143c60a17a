using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Degrees that a joint has left over: available less demanded; negative when it runs out.</summary>
/// <param name="Value">The spare degrees.</param>
/// <param name="MeasuringError">
/// One standard deviation from measuring: the athlete's ranges of motion, and segments off the tape or off the survey.
/// </param>
/// <param name="ModelError">
/// One standard deviation from the model: each parameter anywhere in its span with equal chance, one after the other.
/// </param>
/// <param name="Side">The side that decides.</param>
public readonly record struct Spare(Angle Value, Angle MeasuringError, Angle ModelError, Side Side)
{
    /// <summary>Both errors together, as independent ones add.</summary>
    public Angle Error => Angle.FromDegrees(Math.Sqrt((MeasuringError.Degrees * MeasuringError.Degrees) + (ModelError.Degrees * ModelError.Degrees)));

    /// <summary>Whether the joint may have enough when the error falls its way.</summary>
    public bool MayBeEnough => (Value + Error).Degrees >= 0;

    /// <summary>Whether the joint has enough even when the error falls against it.</summary>
    public bool IsEnoughDespiteError => (Value - Error).Degrees >= 0;
}
