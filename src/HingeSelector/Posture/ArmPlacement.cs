namespace HingeSelector.Posture;

/// <summary>Where the arms pass the legs, seen from the front.</summary>
public enum ArmPlacement
{
    /// <summary>Outside the knees.</summary>
    OutsideLegs,

    /// <summary>Inside the knees.</summary>
    InsideLegs,
}
