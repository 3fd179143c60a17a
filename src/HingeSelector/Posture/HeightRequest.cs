using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>A request for the height of the hands.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="NotBelow">A height under which the answer may not go, on top of the standard one; null for none.</param>
public readonly record struct HeightRequest(HeightRequestKind Kind, Length? NotBelow)
{
    /// <summary>The variant's own height.</summary>
    public static HeightRequest Standard => default;

    /// <summary>The lowest that fits, never below the standard height.</summary>
    public static HeightRequest LowestThatFits => new(HeightRequestKind.LowestThatFits, null);

    /// <summary>The lowest that fits from a given height upwards.</summary>
    public static HeightRequest AtLeast(Length height) => new(HeightRequestKind.LowestThatFits, height);
}
