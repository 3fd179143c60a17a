using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Knowledge;

/// <summary>Reads rules/assumptions.yaml.</summary>
public static class AssumptionsReader
{
    private static readonly (string Id, Dimension Dimension)[] _ids =
    [
        ("disc-diameter", Dimension.Length), ("sole-thickness", Dimension.Length), ("low-handle", Dimension.Length), ("high-handle", Dimension.Length),
        ("height-step", Dimension.Length), ("highest-start", Dimension.Length), ("grip-step", Dimension.Length), ("stance-step", Dimension.Length),
        ("most-steps-of-stance", Dimension.None), ("ring-spacing", Dimension.Length), ("elbow-to-elbow", Dimension.Length), ("comparison-load", Dimension.BodyMassMultiple),
    ];

    /// <summary>Reads the assumptions.</summary>
    /// <returns>All of them, or null when one is missing or faulty (the bag says which).</returns>
    public static Assumptions? Read(YamlNode? root, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        var map = MapReader.Open(root, "the assumptions", bag);
        foreach (var node in map?.List("assumptions") ?? [])
            ReadOne(node, values, sources, bag);
        map?.Finish();
        if (map is null)
            return null;
        foreach (var (id, _) in _ids.Where(i => !values.ContainsKey(i.Id)))
            bag.Add(Problems.MissingKey(map.Span, $"assumption: {id}", "the file of assumptions"));
        return bag.ErrorCount != before ? null : new Assumptions
        {
            DiscDiameter = values["disc-diameter"],
            SoleThickness = values["sole-thickness"],
            LowHandle = values["low-handle"],
            HighHandle = values["high-handle"],
            HeightStep = values["height-step"],
            HighestStart = values["highest-start"],
            GripStep = values["grip-step"],
            StanceStep = values["stance-step"],
            MostStepsOfStance = (int)values["most-steps-of-stance"],
            ComparisonLoad = values["comparison-load"],
            RingSpacing = values["ring-spacing"],
            ElbowToElbow = values["elbow-to-elbow"],
        };
    }

    private static void ReadOne(YamlNode node, Dictionary<string, double> values, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        var map = MapReader.Open(node, "an assumption", bag);
        if (map is null)
            return;
        var id = map.Required("assumption");
        var text = map.Required("value");
        Parse.Sources(map, sources, bag);
        map.Required("because");
        map.Finish();
        if (id is null || text is null)
            return;
        var known = _ids.FirstOrDefault(i => i.Id == id.Value);
        if (known.Id is null)
            bag.Add(Problems.UnknownValue(id.Span, id.Value, "assumption", [.. _ids.Select(i => i.Id)]));
        else if (Parse.Quantity(text, known.Id, known.Dimension, bag) is { } value && !values.TryAdd(known.Id, value))
            bag.Add(Problems.DuplicateId(id.Span, "assumption", id.Value, map.Span));
        else if (values.TryGetValue(known.Id, out var read) && read <= 0 && known.Id != "sole-thickness")
            bag.Add(Problems.BadQuantity(text.Span, known.Id, "it must be above zero"));
    }
}
