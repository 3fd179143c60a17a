using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Knowledge;

/// <summary>Reads the head and the weights of a file of rules/philosophies/; its rules are read beside the rules of the base.</summary>
public static class PhilosophyReader
{
    /// <summary>The keys that speak of rules.</summary>
    public static IReadOnlyList<string> RuleKeys { get; } = ["change", "off", "add"];

    /// <summary>Reads one philosophy; what it leaves out is as in the base.</summary>
    public static Philosophy? Read(YamlNode? root, IReadOnlyList<Criterion> criteria, DiagnosticBag bag)
    {
        var map = MapReader.Open(root, "a philosophy", bag);
        if (map is null)
            return null;
        var id = map.Required("philosophy");
        var label = map.Required("label");
        var summary = map.Required("summary");
        var changes = ReadWeights(map.Node("weights"), criteria, bag);
        var changesRules = false;
        foreach (var key in RuleKeys)
            changesRules |= map.List(key).Count > 0;
        map.Finish();
        if (id is null || label is null || summary is null)
            return null;
        var weights = criteria.Select(c => changes.FirstOrDefault(w => w.Criterion == c.Index)?.After ?? c.Weight).ToList();
        return new Philosophy(id.Value, label.Value, summary.Value, weights, changes, changesRules, id.Span);
    }

    private static List<WeightChange> ReadWeights(YamlNode? node, IReadOnlyList<Criterion> criteria, DiagnosticBag bag)
    {
        var changes = new List<WeightChange>();
        var lines = MapReader.Open(node, "the weights", bag);
        if (lines is null)
            return changes;
        foreach (var criterion in criteria)
        {
            if (lines.Scalar(criterion.Id) is not { } text || Parse.Weight(text, bag) is not { } weight)
                continue;
            if (weight == criterion.Weight)
                bag.Add(Problems.NoDifference(text.Span, $"The weight of '{criterion.Id}'", weight.ToString(CultureInfo.InvariantCulture)));
            changes.Add(new WeightChange(criterion.Index, criterion.Weight, weight, text.Span));
        }
        lines.Finish();
        return changes;
    }
}
