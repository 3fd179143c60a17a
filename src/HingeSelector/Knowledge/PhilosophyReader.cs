using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Knowledge;

/// <summary>Reads a file of rules/philosophies/.</summary>
public static class PhilosophyReader
{
    /// <summary>Reads one philosophy; a criterion that it leaves out weighs nothing and is reported.</summary>
    public static Philosophy? Read(YamlNode? root, IReadOnlyList<Criterion> criteria, DiagnosticBag bag)
    {
        var map = MapReader.Open(root, "a philosophy", bag);
        if (map is null)
            return null;
        var id = map.Required("philosophy");
        var label = map.Required("label");
        var summary = map.Required("summary");
        var weights = new int[criteria.Count];
        if (MapReader.Open(map.Node("weights"), "the weights", bag) is { } lines)
        {
            foreach (var criterion in criteria)
                weights[criterion.Index] = Weight(lines.Required(criterion.Id), bag);
            lines.Finish();
        }
        else
        {
            bag.Add(Problems.MissingKey(map.Span, "weights", "a philosophy"));
        }
        map.Finish();
        return id is null || label is null || summary is null ? null : new Philosophy(id.Value, label.Value, summary.Value, weights, id.Span);
    }

    private static int Weight(YamlScalar? text, DiagnosticBag bag)
    {
        if (text is null)
            return 0;
        if (int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var weight) && weight <= 10)
            return weight;
        bag.Add(Problems.BadQuantity(text.Span, "weight", $"'{text.Value}' is not a whole number from 0 to 10"));
        return 0;
    }
}
