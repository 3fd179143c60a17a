using HingeSelector.Reading;

namespace HingeSelector.Comparing;

/// <summary>A piece of a rules folder that can be put in and taken out by itself.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Container">The key of the list or map at the top of the file that holds it; null when it stands at the top or is the whole file.</param>
/// <param name="Key">Its key at the top or in a map; null in a list or for a whole file.</param>
/// <param name="Name">What it is and what it is called.</param>
/// <param name="Rule">Id of the rule when it is one.</param>
/// <param name="Node">What stands there.</param>
internal sealed record Element(string Path, YamlScalar? Container, YamlScalar? Key, string Name, string? Rule, YamlNode Node)
{
    private const string Variants = "variants/";
    private const string Philosophies = "philosophies/";

    /// <summary>Whether it is a whole file.</summary>
    public bool IsFile => Container is null && Key is null;

    /// <summary>The elements of a folder by an identity that survives being moved inside it.</summary>
    /// <param name="trees">The trees of the folder.</param>
    /// <param name="other">The trees of the folder that it is compared with: a variant or philosophy that only one of them has is one element.</param>
    public static IReadOnlyDictionary<string, Element> Of(YamlTrees trees, YamlTrees other)
    {
        var elements = new Dictionary<string, Element>(StringComparer.Ordinal);
        foreach (var (path, root) in trees.Roots.OrderBy(r => r.Key, StringComparer.Ordinal))
        {
            if (root is not YamlMap map)
                continue;
            var whole = path.StartsWith(Variants, StringComparison.Ordinal) || path.StartsWith(Philosophies, StringComparison.Ordinal);
            if (whole && !other.Has(path))
                elements[path] = new Element(path, null, null, path, null, map);
            else
                Add(elements, path, map);
        }
        return elements;
    }

    private static void Add(Dictionary<string, Element> elements, string path, YamlMap map)
    {
        var slash = path.IndexOf('/', StringComparison.Ordinal);
        var isTopic = slash >= 0 && !path.StartsWith(Variants, StringComparison.Ordinal) && !path.StartsWith(Philosophies, StringComparison.Ordinal);
        foreach (var (key, value) in map.Entries)
        {
            if (value is YamlList list && list.Items.All(i => IdOf(i) is not null))
            {
                foreach (var item in list.Items)
                {
                    var (kind, id) = IdOf(item)!.Value;
                    var rule = isTopic && kind == "rule" ? id : null;
                    // A rule may move to another file of its topic without becoming another rule.
                    elements[isTopic ? $"{path[..slash]} {kind} {id}" : $"{path} {key.Value} {id}"] = new Element(path, key, null, isTopic || key.Value == "add" ? $"{kind} {id}" : $"{(path.StartsWith(Philosophies, StringComparison.Ordinal) ? $"{key.Value} " : "")}{kind} {id}", rule, item);
                }
            }
            else if (value is YamlMap entries)
            {
                foreach (var (entry, node) in entries.Entries)
                    elements[$"{path} {key.Value} {entry.Value}"] = new Element(path, key, entry, $"{key.Value} {entry.Value}", null, node);
            }
            else
            {
                elements[$"{path} {key.Value}"] = new Element(path, null, key, key.Value, null, value);
            }
        }
    }

    private static (string Kind, string Id)? IdOf(YamlNode node)
        => node is YamlMap { Entries: [{ Key: var kind, Value: YamlScalar id }, ..] } ? (kind.Value, id.Value) : null;
}
