using HingeSelector.Quantities;

namespace HingeSelector.Statics;

/// <summary>A straight lever held by one muscle: the textbook form of a low-back estimate, kept to check the arithmetic.</summary>
/// <param name="Muscle">Force of the muscle.</param>
/// <param name="AxialReaction">Force of the pivot along the lever, towards the free end.</param>
/// <param name="TransverseReaction">Force of the pivot across the lever, against the weights.</param>
public readonly record struct LeverBalance(Force Muscle, Force AxialReaction, Force TransverseReaction)
{
    /// <summary>Balances a lever.</summary>
    /// <param name="fromVertical">Lever from upright; 90 is level.</param>
    /// <param name="loads">Weights on it.</param>
    /// <param name="muscleAt">Where the muscle pulls, from the pivot along the lever.</param>
    /// <param name="muscleToLever">Angle between muscle and lever.</param>
    public static LeverBalance Of(Angle fromVertical, IReadOnlyList<LeverLoad> loads, Length muscleAt, Angle muscleToLever)
    {
        var across = Math.Sin(fromVertical.Radians);
        var total = loads.Sum(l => l.Weight.Newtons);
        var muscle = loads.Sum(l => l.Weight.Newtons * l.Along.Metres) * across / (muscleAt.Metres * Math.Sin(muscleToLever.Radians));
        return new LeverBalance(
            Force.FromNewtons(muscle),
            Force.FromNewtons((muscle * Math.Cos(muscleToLever.Radians)) + (total * Math.Cos(fromVertical.Radians))),
            Force.FromNewtons((total * across) - (muscle * Math.Sin(muscleToLever.Radians))));
    }

    /// <summary>Size of the force that a joint carries under a slanting muscle and a hanging weight, and its angle above level.</summary>
    /// <param name="muscle">Force of the muscle.</param>
    /// <param name="aboveLevel">Its line above level.</param>
    /// <param name="weight">Weight carried.</param>
    public static (Force Size, Angle AboveLevel) JointForce(Force muscle, Angle aboveLevel, Force weight)
    {
        var level = muscle.Newtons * Math.Cos(aboveLevel.Radians);
        var upright = (muscle.Newtons * Math.Sin(aboveLevel.Radians)) + weight.Newtons;
        return (Force.FromNewtons(Math.Sqrt((level * level) + (upright * upright))), Angle.FromRadians(Math.Atan2(upright, level)));
    }
}
