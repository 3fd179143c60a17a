using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>What was measured of one leg; each item may be missing.</summary>
public sealed record SideRange
{
    /// <summary>Nothing measured.</summary>
    public static SideRange Nothing { get; } = new();

    /// <summary>Passive straight-leg raise.</summary>
    public HipFlexionMeasure? StraightLegRaise { get; init; }

    /// <summary>Hip flexion with the knee bent.</summary>
    public HipFlexionMeasure? KneeBentHipFlexion { get; init; }

    /// <summary>Hip abduction.</summary>
    public AngleMeasure? HipAbduction { get; init; }

    /// <summary>Hip external rotation.</summary>
    public AngleMeasure? HipExternalRotation { get; init; }

    /// <summary>Ankle dorsiflexion under body weight.</summary>
    public AngleMeasure? Dorsiflexion { get; init; }

    /// <summary>
    /// Flexion of thigh against pelvis that the hip has at a bend of the knee: the smaller of the knee-bent range and the
    /// straight-leg raise plus what the bent knee gives back to the hamstrings. Each reading loses the pelvis share once when
    /// the pelvis was not held. Null when neither was measured; when one was, that one alone decides.
    /// </summary>
    /// <param name="kneeFlexion">Bend of the knee in the position asked about.</param>
    /// <param name="parameters">Holds the slope (biomechanics: Gajdosik 1993, derived 0.66 to 0.92) and the pelvis share.</param>
    public Angle? HipFlexionAt(Angle kneeFlexion, ModelParameters parameters)
        => HipFlexion(kneeFlexion.Degrees, parameters.HamstringSlope, parameters.PelvisShare) is { } degrees ? Angle.FromDegrees(degrees) : null;

    internal double? HipFlexion(double kneeFlexion, double slope, double pelvisShare, double raiseShift = 0, double bentShift = 0)
    {
        double? raise = StraightLegRaise is { } r ? OfThePelvisFree(r, pelvisShare, raiseShift) + (slope * kneeFlexion) : null;
        double? bent = KneeBentHipFlexion is { } b ? OfThePelvisFree(b, pelvisShare, bentShift) : null;
        if (raise is null || bent is null)
            return raise ?? bent;
        return Math.Min(raise.Value, bent.Value);
    }

    private static double OfThePelvisFree(HipFlexionMeasure measure, double pelvisShare, double shift)
    {
        var reading = measure.Value.Degrees + shift;
        return measure.Pelvis == PelvisHeld.Yes ? reading : reading * (1 - (pelvisShare / 100));
    }
}
