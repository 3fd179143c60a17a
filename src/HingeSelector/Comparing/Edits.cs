using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Comparing;

/// <summary>Compares two versions of the rules element by element; comments, order and moves inside a topic are no differences.</summary>
public static class Edits
{
    private const int MostShown = 90;

    private static readonly HashSet<string> _wording = new(StringComparer.Ordinal)
    {
        "because", "grade", "disputed", "sources", "tries", "label", "means", "summary", "asks", "protocol", "error source", "reason", "source",
    };

    /// <summary>What differs, in the order of the files.</summary>
    public static IReadOnlyList<Edit> Between(YamlTrees from, YamlTrees to)
    {
        var (before, after) = (Element.Of(from, to), Element.Of(to, from));
        return [.. before.Keys.Union(after.Keys).Select(k => Compare(before.GetValueOrDefault(k), after.GetValueOrDefault(k))).OfType<Edit>()
            .OrderBy(e => e.Path, StringComparer.Ordinal).ThenBy(e => e.Lines[0].Span.Line).ThenBy(e => e.Name, StringComparer.Ordinal)];
    }

    private static Edit? Compare(Element? before, Element? after)
    {
        var lines = new List<EditedLine>();
        if (before is not null && after is not null)
            Compare("", before.Node, after.Node, lines);
        else
            lines.Add(new EditedLine("", before is null ? null : Print(before.Node), after is null ? null : Print(after.Node), At((after ?? before)!.Node)));
        if (lines.Count == 0)
            return null;
        var element = (after ?? before)!;
        return new Edit(element.Name, element.Rule, IsWording(before, after, lines), lines) { Before = before, After = after };
    }

    private static bool IsWording(Element? before, Element? after, List<EditedLine> lines)
    {
        var element = (after ?? before)!;
        if (element.Path == "sources.yaml" || (element.Container is null && element.Key is { } key && _wording.Contains(key.Value)))
            return true;
        return before is not null && after is not null && lines.TrueForAll(l => _wording.Contains(l.What.Split(" > ")[0]));
    }

    private static void Compare(string what, YamlNode before, YamlNode after, List<EditedLine> lines)
    {
        string Deeper(string key) => what.Length == 0 ? key : $"{what} > {key}";
        switch (before, after)
        {
            case (YamlScalar x, YamlScalar y):
                if (x.Value != y.Value)
                    lines.Add(new EditedLine(what, x.Value, y.Value, y.Span));
                break;
            case (YamlMap x, YamlMap y):
                foreach (var (key, value) in y.Entries)
                {
                    if (x.Find(key.Value) is { } old)
                        Compare(Deeper(key.Value), old, value, lines);
                    else
                        lines.Add(new EditedLine(Deeper(key.Value), null, Print(value), key.Span));
                }
                foreach (var (key, value) in x.Entries.Where(e => y.Find(e.Key.Value) is null))
                    lines.Add(new EditedLine(Deeper(key.Value), Print(value), null, key.Span));
                break;
            case (YamlList x, YamlList y) when x.Items.Count == y.Items.Count:
                for (var i = 0; i < x.Items.Count; i++)
                    Compare(what, x.Items[i], y.Items[i], lines);
                break;
            case (YamlList x, YamlList y):
                foreach (var item in y.Items.Where(i => !x.Items.Any(o => Same(o, i))))
                    lines.Add(new EditedLine(what, null, Print(item), At(item)));
                foreach (var item in x.Items.Where(i => !y.Items.Any(o => Same(o, i))))
                    lines.Add(new EditedLine(what, Print(item), null, At(item)));
                // The same items, one of them written more often: rare, and still a difference.
                if (lines.Count == 0)
                    lines.Add(new EditedLine(what, Print(x), Print(y), At(y)));
                break;
            default:
                lines.Add(new EditedLine(what, Print(before), Print(after), At(after)));
                break;
        }
    }

    private static bool Same(YamlNode a, YamlNode b)
    {
        var lines = new List<EditedLine>();
        Compare("", a, b, lines);
        return lines.Count == 0;
    }

    private static SourceSpan At(YamlNode node) => node is YamlMap { Entries: [var first, ..] } ? first.Value is YamlScalar id ? id.Span : first.Key.Span : node.Span;

    private static string Print(YamlNode node)
    {
        var text = Whole(node);
        return text.Length <= MostShown ? text : $"{text[..MostShown].TrimEnd()} ...";
    }

    private static string Whole(YamlNode node) => node switch
    {
        YamlScalar one => one.Value,
        YamlList list => $"[{string.Join(", ", list.Items.Select(Whole))}]",
        YamlMap map => string.Join(", ", map.Entries.Select(e => $"{e.Key.Value}: {Whole(e.Value)}")),
        _ => "",
    };
}
