using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>What a set-up search may choose from and what is asked of it.</summary>
public sealed record SetUpRequest
{
    /// <summary>Hand heights that the room can make, ascending.</summary>
    public required IReadOnlyList<Length> Heights { get; init; }

    /// <summary>Grips that may be tried, between the middle fingers, ascending.</summary>
    public required IReadOnlyList<Length> Grips { get; init; }

    /// <summary>The variant's own hand height; the nearest of the room's heights stands for it.</summary>
    public required Length StandardHeight { get; init; }

    /// <summary>The variant's own grip; the nearest of the given grips stands for it.</summary>
    public required Length StandardGrip { get; init; }

    /// <summary>Sole of the shoe and platform under the feet.</summary>
    public Length Sole { get; init; }

    /// <summary>What is asked of the height.</summary>
    public HeightRequest Height { get; init; }

    /// <summary>What is asked of the grip.</summary>
    public GripRequest Grip { get; init; }

    /// <summary>What a coach saw at the bar, when confirmed.</summary>
    public HeldHeight? Held { get; init; }

    /// <summary>
    /// Whether only the first try is wanted. Bands and errors cost ten times as much as the try itself; a simulation that asks
    /// thousands of times goes without. The first try, its position and its fit are the same either way.
    /// </summary>
    public bool FirstTryOnly { get; init; }
}
