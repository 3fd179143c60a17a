using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>A measured range of motion.</summary>
/// <param name="Value">The reading.</param>
/// <param name="StandardError">One standard error of measurement.</param>
public readonly record struct AngleMeasure(Angle Value, Angle StandardError)
{
    /// <summary>Ankle dorsiflexion from the knee-to-wall distance, by the slope of the model.</summary>
    /// <param name="distance">Toe to wall with the knee touching.</param>
    /// <param name="standardError">One standard error of that distance.</param>
    /// <param name="parameters">Holds the slope, degrees per centimetre.</param>
    public static AngleMeasure FromKneeToWall(Length distance, Length standardError, ModelParameters parameters) => new(
        Angle.FromDegrees(distance.Centimetres * parameters.KneeToWallSlope),
        Angle.FromDegrees(standardError.Centimetres * parameters.KneeToWallSlope));
}
