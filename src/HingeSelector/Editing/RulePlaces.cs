using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Rules;

namespace HingeSelector.Editing;

/// <summary>Where rules stand, also in files that cannot be compiled yet.</summary>
public static class RulePlaces
{
    /// <summary>Places by id, over every file that is YAML.</summary>
    public static IReadOnlyDictionary<string, SourceSpan> Of(RuleFiles files)
    {
        var places = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        var sources = files.Sources();
        foreach (var path in sources.Keys.Order(StringComparer.Ordinal))
        {
            // Faults of a file are told by 'rules check'.
            if (YamlReader.Read(sources[path], new DiagnosticBag()) is not YamlMap root || root.Find("rules") is not YamlList rules)
                continue;
            foreach (var id in rules.Items.OfType<YamlMap>().Select(r => r.Find("rule")).OfType<YamlScalar>())
                places.TryAdd(id.Value, id.Span);
        }
        return places;
    }
}
