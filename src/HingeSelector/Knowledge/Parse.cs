using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Knowledge;

/// <summary>Small readings that several files share.</summary>
internal static class Parse
{
    private static readonly IReadOnlyDictionary<string, Grade> _grades = Enum.GetValues<Grade>().ToDictionary(Name, g => g, StringComparer.Ordinal);

    /// <summary>The word of a grade in files and on pages.</summary>
    public static string Name(Grade grade) => grade.ToString().ToLowerInvariant();

    public static Grade? Grade(YamlScalar? text, DiagnosticBag bag)
    {
        if (text is null)
            return null;
        if (_grades.TryGetValue(text.Value, out var grade))
            return grade;
        bag.Add(Problems.UnknownValue(text.Span, text.Value, "grade", [.. _grades.Keys]));
        return null;
    }

    public static bool YesNo(YamlScalar? text, string word, DiagnosticBag bag)
    {
        switch (text?.Value)
        {
            case null or "no":
                return false;
            case "yes":
                return true;
            default:
                bag.Add(Trap.IsOne(text.Value)
                    ? Problems.YamlTrap(text.Span, text.Value, "yes or no")
                    : Problems.UnknownValue(text.Span, text.Value, word, ["yes", "no"]));
                return false;
        }
    }

    public static double? Quantity(YamlScalar? text, string word, Dimension dimension, DiagnosticBag bag)
    {
        if (text is null)
            return null;
        if (QuantityText.TryRead(text.Value, dimension, null, out var value, out var problem))
            return value;
        bag.Add(Problems.BadQuantity(text.Span, word, problem!));
        return null;
    }

    /// <summary>A weight of a criterion.</summary>
    public static int? Weight(YamlScalar? text, DiagnosticBag bag)
    {
        const int most = 10;
        if (text is null)
            return null;
        if (int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var weight) && weight <= most)
            return weight;
        bag.Add(Problems.BadQuantity(text.Span, "weight", $"'{text.Value}' is not a whole number from 0 to {most}"));
        return null;
    }

    public static DateOnly? Date(YamlScalar? text, DiagnosticBag bag)
    {
        if (text is null)
            return null;
        if (TryDate(text.Value, out var date))
            return date;
        bag.Add(Problems.BadDate(text.Span, text.Value));
        return null;
    }

    public static bool TryDate(string text, out DateOnly date)
        => DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date);

    public static IReadOnlyList<string> Sources(MapReader map, IReadOnlyDictionary<string, Source> known, DiagnosticBag bag)
    {
        var ids = map.Scalars("sources");
        foreach (var id in ids.Where(i => !known.ContainsKey(i.Value)))
            bag.Add(Problems.UnknownSource(id.Span, id.Value, [.. known.Keys]));
        return [.. ids.Select(i => i.Value)];
    }
}
