using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Words;

/// <content>Minutes and spreads, for the explanations.</content>
public sealed partial class VocabularyReader
{
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
