using HingeSelector.Reading;
using HingeSelector.Rules;

namespace HingeSelector.Comparing;

/// <summary>The files of a rules folder with their trees, so that single elements can be put in and taken out.</summary>
/// <param name="Files">The files.</param>
/// <param name="Trees">Their trees.</param>
public sealed record Version(RuleFiles Files, YamlTrees Trees)
{
    /// <summary>The same folder with one edit made: the element of the second version put in where that of the first stands.</summary>
    internal Version With(Edit edit) => Replace(edit.Before, edit.After);

    /// <summary>The same folder with one edit taken back.</summary>
    internal Version Without(Edit edit) => Replace(edit.After, edit.Before);

    private Version Replace(Element? old, Element? next)
    {
        var roots = new Dictionary<string, YamlNode?>(Trees.Roots, StringComparer.Ordinal);
        if (old is not null)
            TakeOut(roots, old);
        if (next is not null)
            PutIn(roots, next);
        var texts = roots.Keys.ToDictionary(k => k, k => Files.Texts.GetValueOrDefault(k, ""), StringComparer.Ordinal);
        return new Version(Files with { Texts = texts }, YamlTrees.Of(roots));
    }

    private static void TakeOut(Dictionary<string, YamlNode?> roots, Element element)
    {
        if (element.IsFile)
        {
            roots.Remove(element.Path);
            return;
        }
        if (roots.GetValueOrDefault(element.Path) is YamlMap root)
            roots[element.Path] = Edited(root, element, null);
    }

    private static void PutIn(Dictionary<string, YamlNode?> roots, Element element)
        => roots[element.Path] = element.IsFile ? element.Node : Edited(roots.GetValueOrDefault(element.Path) as YamlMap ?? new YamlMap([], element.Node.Span), element, element.Node);

    private static YamlMap Edited(YamlMap root, Element element, YamlNode? node)
    {
        if (element.Container is not { } container)
            return SetEntry(root, element.Key!, node);
        if (element.Key is { } key)
            return SetEntry(root, container, SetEntry(root.Find(container.Value) as YamlMap ?? new YamlMap([], container.Span), key, node));
        var items = (root.Find(container.Value) as YamlList)?.Items ?? [];
        var id = IdOf(element.Node);
        var place = items.ToList().FindIndex(i => IdOf(i) == id);
        var kept = items.ToList();
        if (node is null)
            kept.RemoveAll(i => IdOf(i) == id);
        else if (place >= 0)
            kept[place] = node;
        else
            kept.Add(node);
        return SetEntry(root, container, new YamlList(kept, container.Span));
    }

    private static string? IdOf(YamlNode node) => node is YamlMap { Entries: [{ Value: YamlScalar id }, ..] } ? id.Value : null;

    private static YamlMap SetEntry(YamlMap map, YamlScalar key, YamlNode? node)
    {
        var entries = map.Entries.ToList();
        var place = entries.FindIndex(e => e.Key.Value == key.Value);
        if (node is null)
            entries.RemoveAll(e => e.Key.Value == key.Value);
        else if (place >= 0)
            entries[place] = new(key, node);
        else
            entries.Add(new(key, node));
        return map with { Entries = entries };
    }
}
