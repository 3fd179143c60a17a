namespace HingeSelector.Posture;

/// <summary>What the planar model leaves out.</summary>
public enum NotModelledReason
{
    /// <summary>Pulls on one leg.</summary>
    OneLeg,

    /// <summary>A bar so low that the foot is in its way.</summary>
    BarAtTheFoot,

    /// <summary>A bar so close over the ankle that the shank would have to lean backwards.</summary>
    ShankLeansBack,
}
