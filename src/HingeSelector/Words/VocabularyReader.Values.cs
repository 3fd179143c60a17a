using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Words;

/// <content>Numbers, ranges and spreads of a fact.</content>
public sealed partial class VocabularyReader
{
    private Unit? ReadUnit(MapReader map, Dimension dimension)
    {
        var text = map.Scalar("unit");
        if (text is null)
            return Unit.PreferredFor(dimension);
        var unit = Unit.Find(text.Value);
        if (unit is not null && unit.Dimension == dimension)
            return unit;
        _bag.Add(Problems.BadQuantity(text.Span, "unit", $"'{text.Value}' does not measure this kind; expected {QuantityText.Expected(dimension)}"));
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

    private (double Low, double High)? ReadRange(MapReader map, string key, Dimension dimension)
    {
        var text = map.Scalar(key);
        if (text is null)
            return null;
        var parts = text.Value.Split(" to ", 2);
        if (parts.Length == 2
            && QuantityText.TryRead(parts[0], dimension, null, out var low, out _)
            && QuantityText.TryRead(parts[1], dimension, null, out var high, out _)
            && low <= high)
        {
            return (low, high);
        }
        _bag.Add(Problems.BadQuantity(text.Span, key, $"'{text.Value}' is not a range; write it like '20 deg to 130 deg'"));
        return null;
    }

    private double? ReadQuantity(YamlScalar? text, Dimension dimension)
    {
        if (text is null)
            return null;
        if (QuantityText.TryRead(text.Value, dimension, null, out var value, out var problem))
            return value;
        _bag.Add(Problems.BadQuantity(text.Span, text.Value, problem!));
        return null;
    }

    private DateOnly? ReadDate(YamlScalar? text)
    {
        if (text is null)
            return null;
        if (DateOnly.TryParseExact(text.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        _bag.Add(Problems.BadDate(text.Span, text.Value));
        return null;
    }

    private double? ReadMinutes(YamlScalar text)
    {
        if (double.TryParse(text.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var minutes) && minutes is > 0 and < 1000)
            return minutes;
        _bag.Add(Problems.BadQuantity(text.Span, "minutes", $"'{text.Value}' is not a number of minutes; write it like '2' or '0.5'"));
        return null;
    }

    private TypicalSpread? ReadTypical(YamlNode node, Dimension dimension, bool sided)
    {
        var map = MapReader.Open(node, "a typical spread", _bag);
        if (map is null)
            return null;
        var (female, male) = (ReadSpread(map.Required("female"), dimension), ReadSpread(map.Required("male"), dimension));
        var apart = ReadQuantity(sided ? map.Required("sides apart") : map.Scalar("sides apart"), dimension);
        var grade = map.Required("grade");
        var spread = new TypicalSpread(female ?? default, male ?? default, apart ?? 0, grade?.Value ?? "", [.. map.Scalars("sources").Select(s => s.Value)], map.Scalar("note")?.Value);
        map.Finish();
        return female is null || male is null || grade is null ? null : spread;
    }

    private (double Mean, double Deviation)? ReadSpread(YamlScalar? text, Dimension dimension)
    {
        if (text is null)
            return null;
        var parts = text.Value.Split(" +- ", 2);
        if (parts.Length == 2
            && QuantityText.TryRead(parts[0], dimension, null, out var mean, out _)
            && QuantityText.TryRead(parts[1], dimension, null, out var deviation, out _)
            && deviation > 0)
        {
            return (mean, deviation);
        }
        _bag.Add(Problems.BadQuantity(text.Span, "typical", $"'{text.Value}' is not a mean with its standard deviation; write it like '76 deg +- 11 deg'"));
        return null;
    }
}
