using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>How the knees find their bend.</summary>
/// <param name="GivenFlexion">The bend kept from the top (Romanian hinge); null when the start from the floor decides it.</param>
public readonly record struct KneeRule(Angle? GivenFlexion)
{
    /// <summary>Start from the floor: shank, bar and shoulder decide.</summary>
    public static KneeRule Free => default;

    /// <summary>From the top down with softly bent knees that keep their bend while the hands travel down the legs.</summary>
    public static KneeRule Kept(Angle flexion) => new(flexion);
}
