namespace HingeSelector.Posture;

/// <summary>Whether a set-up suits a body.</summary>
public enum Fit
{
    /// <summary>A range that decides was not measured, and none that was runs out.</summary>
    Unknown,

    /// <summary>Every measured joint has degrees to spare.</summary>
    Fits,

    /// <summary>A measured joint runs out, arms and legs meet, or there is no position at all.</summary>
    DoesNotFit,
}
