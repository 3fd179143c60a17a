using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Screening;

/// <summary>Reads what a room has. Every number carries its unit, every count is whole.</summary>
public sealed class RoomReader
{
    private const int MostOfAKind = 1000;

    private static readonly (double, double) _barMass = (1, 60);
    private static readonly (double, double) _discMass = (0.1, 60);
    private static readonly (double, double) _handMass = (0.5, 150);
    private static readonly (double, double) _discDiameter = (0.08, 0.6);
    private static readonly (double, double) _handleHeight = (0.05, 0.6);
    private static readonly (double, double) _blockHeight = (0.005, 0.8);
    private static readonly (double, double) _pinHeight = (0.05, 1.5);
    private static readonly (double, double) _pinSpacing = (0.01, 0.3);
    private static readonly (double, double) _boxHeight = (0.02, 1.2);

    private readonly DiagnosticBag _bag;

    private RoomReader(DiagnosticBag bag) => _bag = bag;

    /// <summary>Reads one file.</summary>
    /// <returns>The room, or null when there were faults.</returns>
    public static Room? Read(SourceText source, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        var map = MapReader.Open(YamlReader.Read(ByteOrderMark.Without(source), bag), "a room", bag);
        var room = map is null ? null : new RoomReader(bag).Read(map);
        return bag.ErrorCount == before ? room : null;
    }

    private Room Read(MapReader map)
    {
        // The kind of floor is a note for people.
        map.Scalar("floor");
        var dropped = map.Scalar("bars-may-be-dropped");
        var room = new Room
        {
            Name = map.Required("room")?.Value ?? "",
            BarsMayBeDropped = dropped is { Value.Length: > 0 } ? Parse.YesNo(dropped, "bars-may-be-dropped", _bag) : null,
            StraightBars = Items(map, "straight-bars", "a straight bar", m => (Mass(m, _barMass), Count(m, "number"))),
            HexBars = Items(map, "hex-bars", "a hex bar", HexBar),
            Discs = Items(map, "discs", "a disc", m => (Mass(m, _discMass), Length(m, "diameter", _discDiameter), Count(m, "number"))),
            Blocks = Items(map, "blocks", "a pair of blocks", m => (Length(m, "height", _blockHeight), Count(m, "pairs"))),
            Racks = Items(map, "racks", "a rack", m => (Length(m, "lowest-pin", _pinHeight), Length(m, "pin-spacing", _pinSpacing), Count(m, "number"))),
            Straps = CountOrNull(map, "straps"),
            WeightsByHand = Items(map, "weights-by-hand", "a kettlebell or dumbbell", m => (Mass(m, _handMass), Count(m, "number"))),
            Boxes = Items(map, "boxes", "a box", m => (Length(m, "height", _boxHeight), Count(m, "number"))),
            CablesOrBands = CountOrNull(map, "cables-or-bands"),
            Benches = CountOrNull(map, "benches"),
            Sticks = CountOrNull(map, "sticks"),
            Span = map.Span,
        };
        map.Finish();
        return room;
    }

    private (double Mass, double? LowHandle, double? HighHandle, int Number) HexBar(MapReader map)
    {
        var mass = Mass(map, _barMass);
        var (lowText, highText) = (map.Scalar("low-handle"), map.Scalar("high-handle"));
        double? low = lowText is null ? null : Number(lowText, "low-handle", Dimension.Length, _handleHeight);
        double? high = highText is null ? null : Number(highText, "high-handle", Dimension.Length, _handleHeight);
        if (low is null && high is null)
            _bag.Add(Problems.MissingKey(map.Span, "low-handle", "a hex bar"));
        if (low >= high && low > 0 && high > 0)
            _bag.Add(Problems.HandlesExchanged(lowText!.Span, lowText.Value, highText!.Value));
        return (mass, low, high, Count(map, "number"));
    }

    private List<T> Items<T>(MapReader map, string key, string what, Func<MapReader, T> read)
    {
        var items = new List<T>();
        foreach (var node in map.List(key))
        {
            var item = MapReader.Open(node, what, _bag);
            if (item is null)
                continue;
            items.Add(read(item));
            item.Finish();
        }
        return items;
    }

    private double Mass(MapReader map, (double Low, double High) range)
        => map.Required("mass") is { } text ? Number(text, "mass", Dimension.Mass, range) : 0;

    private double Length(MapReader map, string key, (double Low, double High) range)
        => map.Required(key) is { } text ? Number(text, key, Dimension.Length, range) : 0;

    private double Number(YamlScalar text, string key, Dimension dimension, (double Low, double High) range)
    {
        if (Parse.Quantity(text, key, dimension, _bag) is not { } value)
            return 0;
        var unit = Unit.PreferredFor(dimension);
        if (value < range.Low - 1e-9 || value > range.High + 1e-9)
            _bag.Add(Problems.OutOfRange(text.Span, key, QuantityText.Print(value, unit), QuantityText.Print(range.Low, unit), QuantityText.Print(range.High, unit)) with { Hint = "Check the number and its unit." });
        return value;
    }

    private int Count(MapReader map, string key) => map.Required(key) is { } text ? Count(text, key) : 0;

    private int? CountOrNull(MapReader map, string key) => map.Scalar(key) is { Value.Length: > 0 } text ? Count(text, key) : null;

    private int Count(YamlScalar text, string key)
    {
        if (int.TryParse(text.Value.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= MostOfAKind)
            return count;
        _bag.Add(Problems.NotACount(text.Span, key, text.Value, MostOfAKind));
        return 0;
    }
}
