namespace HingeSelector.Body;

/// <summary>The measured ranges of both legs.</summary>
/// <param name="Left">The left leg.</param>
/// <param name="Right">The right leg.</param>
/// <param name="WorkingSide">The leg in front in a split stance; null when not said, then the worse side counts.</param>
public sealed record RangeOfMotion(SideRange Left, SideRange Right, Side? WorkingSide = null)
{
    /// <summary>Nothing measured.</summary>
    public static RangeOfMotion Nothing { get; } = new(SideRange.Nothing, SideRange.Nothing);

    /// <summary>One side.</summary>
    public SideRange this[Side side] => side == Side.Left ? Left : Right;

    /// <summary>Left and right exchanged.</summary>
    public RangeOfMotion Mirrored() => new(Right, Left, WorkingSide switch
    {
        Side.Left => Side.Right,
        Side.Right => Side.Left,
        _ => null,
    });
}
