using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>What the room has, counted. Lengths in metres, masses in kilograms.</summary>
public sealed record Room
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Whether floor and discs allow letting go from the top; null when not said.</summary>
    public bool? BarsMayBeDropped { get; init; }

    /// <summary>Straight bars.</summary>
    public IReadOnlyList<(double Mass, int Number)> StraightBars { get; init; } = [];

    /// <summary>Hex bars with the heights of their handles above the floor; a bar may lack one of the two.</summary>
    public IReadOnlyList<(double Mass, double? LowHandle, double? HighHandle, int Number)> HexBars { get; init; } = [];

    /// <summary>Discs.</summary>
    public IReadOnlyList<(double Mass, double Diameter, int Number)> Discs { get; init; } = [];

    /// <summary>Blocks or plates that raise a bar, in pairs.</summary>
    public IReadOnlyList<(double Height, int Pairs)> Blocks { get; init; } = [];

    /// <summary>Racks with pins on which a bar can lie.</summary>
    public IReadOnlyList<(double LowestPin, double PinSpacing, int Number)> Racks { get; init; } = [];

    /// <summary>Pairs of straps; null when not counted.</summary>
    public int? Straps { get; init; }

    /// <summary>Kettlebells and dumbbells.</summary>
    public IReadOnlyList<(double Mass, int Number)> WeightsByHand { get; init; } = [];

    /// <summary>Boxes to stand a weight on.</summary>
    public IReadOnlyList<(double Height, int Number)> Boxes { get; init; } = [];

    /// <summary>Cables and bands; null when not counted.</summary>
    public int? CablesOrBands { get; init; }

    /// <summary>Benches; null when not counted.</summary>
    public int? Benches { get; init; }

    /// <summary>Sticks; null when not counted.</summary>
    public int? Sticks { get; init; }

    /// <summary>Where.</summary>
    public SourceSpan Span { get; init; } = SourceSpan.None;
}
