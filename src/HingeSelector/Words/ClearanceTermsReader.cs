using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Words;

/// <summary>Reads what a clearance may cover and which profession may clear what.</summary>
internal static class ClearanceTermsReader
{
    private const string Any = "any";
    private const string None = "none";

    /// <summary>Reads both lists from the vocabulary.</summary>
    /// <param name="map">The vocabulary's file.</param>
    /// <param name="history">Values of the history as rules name them.</param>
    /// <param name="bag">Collects faults.</param>
    public static ClearanceTerms Read(MapReader map, IReadOnlyList<string> history, DiagnosticBag bag)
    {
        var covers = map.Scalars("clearance-covers").Select(s => s.Value).ToList();
        var professions = new Dictionary<string, ClearanceProfession>(StringComparer.Ordinal);
        foreach (var node in map.List("clearance-professions"))
        {
            if (ReadProfession(node, history, bag) is var (id, profession) && !professions.TryAdd(profession.Id, profession))
                bag.Add(Problems.RepeatedKey(id.Span, id.Value, id.Span));
        }
        return new ClearanceTerms(covers, [.. professions.Values]);
    }

    private static (YamlScalar Id, ClearanceProfession Profession)? ReadProfession(YamlNode node, IReadOnlyList<string> history, DiagnosticBag bag)
    {
        var map = MapReader.Open(node, "a profession", bag);
        if (map is null)
            return null;
        var id = map.Required("profession");
        var may = map.Scalars("may clear");
        if (map.Node("may clear") is null)
            bag.Add(Problems.MissingKey(map.Span, "may clear", "a profession"));
        map.Finish();
        if (id is null)
            return null;
        if (may is [{ Value: Any }])
            return (id, new ClearanceProfession(id.Value, history));
        if (may is [{ Value: None }])
            return (id, new ClearanceProfession(id.Value, []));
        foreach (var item in may.Where(m => !history.Contains(m.Value)))
            bag.Add(Problems.UnknownValue(item.Span, item.Value, "may clear", [Any, None, .. history]));
        return (id, new ClearanceProfession(id.Value, [.. may.Select(m => m.Value)]));
    }
}
