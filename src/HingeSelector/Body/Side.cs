namespace HingeSelector.Body;

/// <summary>A side of the body.</summary>
public enum Side
{
    /// <summary>The left side.</summary>
    Left,

    /// <summary>The right side.</summary>
    Right,
}
