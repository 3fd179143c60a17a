namespace HingeSelector.Words;

/// <summary>The readings of a word with two sides, in slot order.</summary>
public static class Sides
{
    /// <summary>Slot offset of the left side.</summary>
    public const int Left = 0;

    /// <summary>Slot offset of the right side.</summary>
    public const int Right = 1;

    /// <summary>Slot offset of the worse side.</summary>
    public const int Worse = 2;

    /// <summary>Slot offset of the better side.</summary>
    public const int Better = 3;

    /// <summary>Slot offset of the throwing side.</summary>
    public const int Throwing = 4;

    /// <summary>Slot offset of the other side.</summary>
    public const int Other = 5;

    /// <summary>Slot offset of the distance between the sides.</summary>
    public const int Gap = 6;

    /// <summary>Names in slot order.</summary>
    public static IReadOnlyList<string> Names { get; } = ["left", "right", "worse", "better", "throwing", "other", "gap"];
}
