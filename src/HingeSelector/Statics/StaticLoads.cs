using HingeSelector.Quantities;

namespace HingeSelector.Statics;

/// <summary>
/// Moments of a still position under a load in the hands and the body's own weight, both legs together. A positive moment is
/// one that extensors must hold (at the ankle: calf muscles).
/// </summary>
public sealed record StaticLoads
{
    /// <summary>Load in the hands.</summary>
    public required Mass Load { get; init; }

    /// <summary>Load ahead of the ankle.</summary>
    public required Length AnkleArm { get; init; }

    /// <summary>Load ahead of the knee; negative when it hangs behind it.</summary>
    public required Length KneeArm { get; init; }

    /// <summary>Load ahead of the hip.</summary>
    public required Length HipArm { get; init; }

    /// <summary>Load ahead of the lowest disc of the spine (L5/S1).</summary>
    public required Length L5S1Arm { get; init; }

    /// <summary>Moment that the calf muscles hold.</summary>
    public required Moment Ankle { get; init; }

    /// <summary>
    /// Moment that the knee extensors hold; negative when knee flexors do. The weakest number of the side view: compare it
    /// between bars by direction only, and only where <see cref="KneeCanBeRead"/>.
    /// </summary>
    public required Moment Knee { get; init; }

    /// <summary>False where the thighs open so wide that a side view gives the knee moment the wrong sign (wide and sumo stances).</summary>
    public required bool KneeCanBeRead { get; init; }

    /// <summary>Moment that the hip extensors hold.</summary>
    public required Moment Hip { get; init; }

    /// <summary>Moment that the back extensors hold at the lowest disc.</summary>
    public required Moment L5S1 { get; init; }

    /// <summary>Part of the leg moments that falls to the one leg that works hardest: a half, or the working share of a split stance.</summary>
    public required double LegShare { get; init; }

    /// <summary>Muscle force, compression and shear at the lowest disc.</summary>
    public required LowBackEstimate LowBack { get; init; }

    /// <summary>Body and load together, metres ahead of the ankle.</summary>
    public required Length CentreAhead { get; init; }

    /// <summary>Hip moment of the leg that works hardest.</summary>
    public Moment HipPerLeg => Hip * LegShare;

    /// <summary>Knee moment of the leg that works hardest.</summary>
    public Moment KneePerLeg => Knee * LegShare;
}
