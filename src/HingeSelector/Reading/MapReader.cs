using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>Takes a map apart key by key and reports what is missing, misshapen or unknown.</summary>
public sealed class MapReader
{
    private readonly YamlMap _map;
    private readonly string _where;
    private readonly DiagnosticBag _bag;
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    private MapReader(YamlMap map, string where, DiagnosticBag bag)
    {
        _map = map;
        _where = where;
        _bag = bag;
    }

    /// <summary>Where the map starts.</summary>
    public SourceSpan Span => _map.Entries.Count > 0 ? _map.Entries[0].Key.Span : _map.Span;

    /// <summary>Begins with a node that should be a map.</summary>
    /// <param name="node">The node.</param>
    /// <param name="where">What a message calls the map, for example "a rule".</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The reader, or null when the node is no map.</returns>
    public static MapReader? Open(YamlNode? node, string where, DiagnosticBag bag)
    {
        if (node is YamlMap map)
            return new MapReader(map, where, bag);
        if (node is not null)
            bag.Add(Problems.WrongShape(node.Span, where, "a map of keys and values", node.KindName));
        return null;
    }

    /// <summary>A node that may be absent.</summary>
    public YamlNode? Node(string key)
    {
        _asked.Add(key);
        return _map.Find(key);
    }

    /// <summary>A single value that may be absent.</summary>
    public YamlScalar? Scalar(string key)
    {
        var node = Node(key);
        if (node is null or YamlScalar)
            return (YamlScalar?)node;
        _bag.Add(Problems.WrongShape(node.Span, $"'{key}'", "a single value", node.KindName));
        return null;
    }

    /// <summary>A single value that must be there and not be empty.</summary>
    public YamlScalar? Required(string key)
    {
        var before = _bag.ErrorCount;
        var scalar = Scalar(key);
        if (scalar is { Value.Length: > 0 })
            return scalar;
        if (_bag.ErrorCount == before)
            _bag.Add(Problems.MissingKey(scalar?.Span ?? Span, key, _where));
        return null;
    }

    /// <summary>A list of single values; one bare value counts as a list of one; absent is empty.</summary>
    public IReadOnlyList<YamlScalar> Scalars(string key)
    {
        var node = Node(key);
        if (node is null)
            return [];
        if (node is YamlScalar one)
            return [one];
        var items = new List<YamlScalar>();
        foreach (var item in ListOf(node, key))
        {
            if (item is YamlScalar scalar)
                items.Add(scalar);
            else
                _bag.Add(Problems.WrongShape(item.Span, $"An item of '{key}'", "a single value", item.KindName));
        }
        return items;
    }

    /// <summary>A list of any nodes; absent is empty.</summary>
    public IReadOnlyList<YamlNode> List(string key)
    {
        var node = Node(key);
        return node is null ? [] : ListOf(node, key);
    }

    private IReadOnlyList<YamlNode> ListOf(YamlNode node, string key)
    {
        if (node is YamlList list)
            return list.Items;
        _bag.Add(Problems.WrongShape(node.Span, $"'{key}'", "a list", node.KindName));
        return [];
    }

    /// <summary>Reports every key that nobody asked for.</summary>
    public void Finish()
    {
        foreach (var (key, _) in _map.Entries)
        {
            if (!_asked.Contains(key.Value))
                _bag.Add(Problems.UnknownKey(key.Span, key.Value, _where, _asked));
        }
    }

    /// <summary>Every entry, for maps whose keys are words and not fixed names.</summary>
    public IReadOnlyList<KeyValuePair<YamlScalar, YamlNode>> Entries => _map.Entries;

    /// <summary>Marks a key as known although another reader takes it.</summary>
    public void Known(string key) => _asked.Add(key);
}
