using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Knowledge;

/// <summary>Reads rules/criteria.yaml.</summary>
public static class CriteriaReader
{
    /// <summary>Reads the criteria in their order.</summary>
    public static IReadOnlyList<Criterion> Read(YamlNode? root, DiagnosticBag bag)
    {
        var criteria = new List<Criterion>();
        var map = MapReader.Open(root, "the criteria", bag);
        foreach (var node in map?.List("criteria") ?? [])
        {
            var one = MapReader.Open(node, "a criterion", bag);
            if (one?.Required("criterion") is not { } id)
                continue;
            criteria.Add(new Criterion(id.Value, one.Required("label")?.Value ?? "", one.Required("asks")?.Value ?? "", Parse.Weight(one.Required("weight"), bag) ?? 0, criteria.Count));
            one.Finish();
        }
        map?.Finish();
        return criteria;
    }
}
