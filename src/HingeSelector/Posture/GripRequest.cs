namespace HingeSelector.Posture;

/// <summary>What the rules ask of the grip.</summary>
public enum GripRequest
{
    /// <summary>The variant's own grip, whether it fits or not.</summary>
    Standard,

    /// <summary>The narrowest of the given grips at which some height fits.</summary>
    NarrowestThatFits,

    /// <summary>The widest of the given grips at which some height fits.</summary>
    WidestThatFits,
}
