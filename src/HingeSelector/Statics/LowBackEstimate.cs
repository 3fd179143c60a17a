using HingeSelector.Quantities;

namespace HingeSelector.Statics;

/// <summary>
/// What one equivalent back muscle and the lowest disc carry. Several kilonewtons are ordinary at training loads: compare
/// variants by ratio, never with an occupational limit.
/// </summary>
/// <param name="Moment">Moment that the back extensors hold.</param>
/// <param name="Muscle">Force of the equivalent muscle.</param>
/// <param name="Compression">Force along the spine at the disc.</param>
/// <param name="LoadShear">Force across the disc from the weights alone; positive pushes the upper body forward.</param>
/// <param name="NetShear">The same with the backward pull of the extensors taken off.</param>
public readonly record struct LowBackEstimate(Moment Moment, Force Muscle, Force Compression, Force LoadShear, Force NetShear)
{
    /// <summary>The estimate from a moment and the weight above the disc.</summary>
    /// <param name="moment">Moment that the back extensors hold.</param>
    /// <param name="weightAbove">Weight of body and load above the disc.</param>
    /// <param name="inclination">Disc out of level: 0 standing upright, 90 with the trunk level.</param>
    /// <param name="extensorArm">Lever arm of the equivalent muscle.</param>
    /// <param name="extensorAngle">Its line of pull behind the compression axis.</param>
    public static LowBackEstimate From(Moment moment, Force weightAbove, Angle inclination, Length extensorArm, Angle extensorAngle)
    {
        var muscle = moment.NewtonMetres / extensorArm.Metres;
        var shear = weightAbove.Newtons * Math.Sin(inclination.Radians);
        return new LowBackEstimate(
            moment,
            Force.FromNewtons(muscle),
            Force.FromNewtons((muscle * Math.Cos(extensorAngle.Radians)) + (weightAbove.Newtons * Math.Cos(inclination.Radians))),
            Force.FromNewtons(shear),
            Force.FromNewtons(shear - (muscle * Math.Sin(extensorAngle.Radians))));
    }
}
