using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>Many YAML files read side by side; a rules folder has dozens and staff wait for it at every start.</summary>
public sealed class YamlTrees
{
    private readonly IReadOnlyDictionary<string, YamlNode?> _roots;

    private YamlTrees(IReadOnlyDictionary<string, YamlNode?> roots) => _roots = roots;

    /// <summary>Reads all files.</summary>
    /// <param name="sources">The files by the key under which their trees are asked for.</param>
    /// <param name="bag">Collects faults.</param>
    public static YamlTrees Read(IReadOnlyDictionary<string, SourceText> sources, DiagnosticBag bag)
    {
        var keys = sources.Keys.Order(StringComparer.Ordinal).ToArray();
        var roots = new YamlNode?[keys.Length];
        // A bag belongs to one thread: each file gets its own, and they are poured together in order.
        var bags = new DiagnosticBag[keys.Length];
        Parallel.For(0, keys.Length, i =>
        {
            bags[i] = new DiagnosticBag();
            roots[i] = YamlReader.Read(sources[keys[i]], bags[i]);
        });
        var byKey = new Dictionary<string, YamlNode?>(StringComparer.Ordinal);
        for (var i = 0; i < keys.Length; i++)
        {
            byKey[keys[i]] = roots[i];
            foreach (var fault in bags[i].Sorted)
                bag.Add(fault);
        }
        return new YamlTrees(byKey);
    }

    /// <summary>Takes trees that exist already.</summary>
    public static YamlTrees Of(IReadOnlyDictionary<string, YamlNode?> roots) => new(roots);

    /// <summary>The trees by key.</summary>
    public IReadOnlyDictionary<string, YamlNode?> Roots => _roots;

    /// <summary>Whether there is such a file.</summary>
    public bool Has(string key) => _roots.ContainsKey(key);

    /// <summary>The tree of a file; null when it is faulty or does not exist.</summary>
    public YamlNode? this[string key] => _roots.GetValueOrDefault(key);
}
