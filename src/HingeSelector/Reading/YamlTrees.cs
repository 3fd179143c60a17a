using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>The trees of many YAML files.</summary>
public sealed class YamlTrees
{
    private readonly Dictionary<string, YamlNode?> _roots = new(StringComparer.Ordinal);

    private YamlTrees()
    {
    }

    /// <summary>Reads all files.</summary>
    /// <param name="sources">The files by the key under which their trees are asked for.</param>
    /// <param name="bag">Collects faults.</param>
    public static YamlTrees Read(IReadOnlyDictionary<string, SourceText> sources, DiagnosticBag bag)
    {
        var trees = new YamlTrees();
        foreach (var key in sources.Keys.Order(StringComparer.Ordinal))
            trees._roots[key] = YamlReader.Read(sources[key], bag);
        return trees;
    }

    /// <summary>Whether there is such a file.</summary>
    public bool Has(string key) => _roots.ContainsKey(key);

    /// <summary>The tree of a file; null when it is faulty or does not exist.</summary>
    public YamlNode? this[string key] => _roots.GetValueOrDefault(key);
}
