using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Words;

/// <content>Values of a word, the sides of values, and lifetimes.</content>
public sealed partial class VocabularyReader
{
    /// <summary>An answer holds one bit a value.</summary>
    private const int MostValues = 64;

    private IReadOnlyList<string> ReadValues(MapReader map, WordKind kind)
    {
        var node = map.Node("values");
        if (node is YamlScalar { Value: "variants" })
            return _variants;
        if (kind is not (WordKind.Choice or WordKind.Set))
            return [];
        var values = map.Scalars("values").Select(v => v.Value).ToList();
        if (values.Count == 0)
            return ["no", "yes"];
        if (values.Count > MostValues)
            _bag.Add(Problems.TooMany(map.Span, "values of one word", MostValues));
        return values;
    }

    private ValueSides? ReadValueSides(MapReader map, IReadOnlyList<string> values)
    {
        var names = map.Scalars("values with sides");
        foreach (var name in names.Where(n => !values.Contains(n.Value)))
            _bag.Add(Problems.UnknownValue(name.Span, name.Value, "values with sides", [.. values]));
        if (names.Count == 0)
            return null;
        var sides = new ValueSides(values, [.. names.Select(n => n.Value)]);
        if (sides.Typed.Count <= MostValues)
            return sides;
        _bag.Add(Problems.TooMany(map.Span, "values of one word, left and right counted", MostValues));
        return null;
    }

    private Lifetime ReadLifetime(MapReader map)
    {
        var text = map.Required("lifetime");
        var grown = ReadQuantity(map.Scalar("ends when grown"), Dimension.Length);
        if (text is null || text.Value == "always")
            return new Lifetime(null, grown);
        if (text.Value == "today")
            return new Lifetime(0, grown);
        var hours = ReadQuantity(text, Dimension.Time);
        return new Lifetime(hours is { } h ? (int)Math.Round(h / 24) : null, grown);
    }
}
