namespace HingeSelector.Posture;

/// <summary>What the rules ask of the bar's height.</summary>
public enum HeightRequestKind
{
    /// <summary>The variant's own height, whether it fits or not.</summary>
    Standard,

    /// <summary>The lowest of the room's heights, from the standard one upwards, that fits.</summary>
    LowestThatFits,
}
