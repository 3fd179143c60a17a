using System.Text;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Editing;

/// <summary>Writes a file of rules in the layout that all of them share: order of keys, two blanks a step, one empty line between rules.</summary>
/// <remarks>
/// What stands on one line is copied as it is, comments behind it included; lines of comments go with the line below them.
/// Meant for files where every value either stands on the line of its key or below it; what comes of others does not read alike, so the
/// caller has to compare.
/// </remarks>
internal sealed class CanonicalLayout
{
    private const int Step = 2;

    private readonly string[] _lines;
    private readonly Dictionary<int, List<string>> _above = [];
    private readonly StringBuilder _text = new();
    private readonly List<string> _atEnd = [];

    private CanonicalLayout(SourceText source)
    {
        _lines = source.Text.Split('\n');
        CollectComments();
    }

    /// <summary>The text in the shared layout.</summary>
    /// <param name="path">Path inside the rules folder.</param>
    /// <param name="source">The file.</param>
    /// <param name="root">Its tree.</param>
    public static string Write(string path, SourceText source, YamlMap root)
    {
        var layout = new CanonicalLayout(source);
        if (layout.IsInBrackets(root))
            return source.Text;
        // What stands above the first line is about the whole file, whichever key comes first.
        layout.WriteAbove(root.Entries[0].Key.Span.Line, 0, Blank.Kept);
        layout.WriteMap(root, 0, "", KeyOrder.OfFile(path), path.StartsWith("variants/", StringComparison.Ordinal) || path.StartsWith("philosophies/", StringComparison.Ordinal) ? Blank.Kept : Blank.One);
        foreach (var line in layout._atEnd)
            layout._text.Append(line).Append('\n');
        return layout._text.ToString();
    }

    // Which empty lines stand above an item.
    private enum Blank
    {
        None,
        Kept,
        One,
    }

    // Lines of comments and empty lines, by the line below them.
    private void CollectComments()
    {
        var block = new List<string>();
        for (var i = 0; i < _lines.Length; i++)
        {
            var line = _lines[i].Trim();
            if (line.Length > 0 && line[0] != '#')
            {
                if (block.Count > 0)
                    _above[i] = block;
                block = [];
            }
            else if (line.Length > 0 || (block.Count > 0 ? block[^1].Length > 0 : i > 0))
            {
                block.Add(line);
            }
        }
        while (block.Count > 0 && block[^1].Length == 0)
            block.RemoveAt(block.Count - 1);
        _atEnd.AddRange(block);
    }

    private void WriteAbove(int line, int indent, Blank blanks)
    {
        var above = _above.GetValueOrDefault(line) ?? [];
        if (blanks == Blank.One && _text.Length > 0)
            _text.Append('\n');
        for (var i = 0; i < above.Count; i++)
        {
            if (above[i].Length > 0)
                _text.Append(' ', indent).Append(above[i]).Append('\n');
            else if (blanks == Blank.Kept || (blanks == Blank.One && i > 0))
                _text.Append('\n');
        }
    }

    private void WriteMap(YamlMap map, int indent, string hyphen, IReadOnlyList<string> order, Blank blanks)
    {
        var first = map.Entries[0].Key.Span.Line;
        var place = 0;
        foreach (var (key, value) in map.Entries.OrderBy(e => order.ToList().IndexOf(e.Key.Value) is >= 0 and var rank ? rank : order.Count))
        {
            // What stands above the first line was written before the map.
            if (key.Span.Line != first)
                WriteAbove(key.Span.Line, hyphen.Length > 0 && place == 0 ? indent - Step : indent, place == 0 ? Blank.Kept : blanks);
            else if (place > 0 && blanks == Blank.One)
                _text.Append('\n');
            var start = place++ == 0 && hyphen.Length > 0 ? new string(' ', indent - Step) + hyphen : new string(' ', indent);
            _text.Append(start).Append(Cut(key.Span.Line, key.Span.Column, key.Span.Column + key.Span.Length)).Append(':');
            WriteValue(key, value, indent);
        }
    }

    private void WriteValue(YamlScalar key, YamlNode value, int indent)
    {
        if (value is YamlScalar { Value.Length: 0, Quoted: false })
        {
            _text.Append('\n');
            return;
        }
        if (value.Span.Line == key.Span.Line)
        {
            _text.Append(' ').Append(Rest(value.Span.Line, value.Span.Column)).Append('\n');
            return;
        }
        // A comment behind a key whose value stands below.
        var behind = Rest(key.Span.Line, key.Span.Column + key.Span.Length).TrimStart(' ', ':');
        _text.Append(behind.Length > 0 ? " " + behind : "").Append('\n');
        WriteBelow(key.Value, value, indent + Step);
    }

    private void WriteBelow(string key, YamlNode value, int indent)
    {
        if (value is YamlMap map && !IsInBrackets(value))
        {
            WriteAbove(map.Entries[0].Key.Span.Line, indent, Blank.None);
            WriteMap(map, indent, "", KeyOrder.Below(key), Blank.None);
        }
        else if (value is YamlList list && !IsInBrackets(value))
        {
            WriteList(key, list, indent);
        }
        else
        {
            WriteAbove(value.Span.Line, indent, Blank.None);
            _text.Append(' ', indent).Append(Rest(value.Span.Line, value.Span.Column)).Append('\n');
        }
    }

    private void WriteList(string key, YamlList list, int indent)
    {
        for (var i = 0; i < list.Items.Count; i++)
        {
            var item = list.Items[i];
            var isBlock = item is YamlMap && !IsInBrackets(item);
            var line = isBlock ? ((YamlMap)item).Entries[0].Key.Span.Line : item.Span.Line;
            WriteAbove(line, indent, i == 0 ? Blank.None : BetweenItems(key));
            if (isBlock)
                WriteMap((YamlMap)item, indent + Step, "- ", KeyOrder.Below(key), Blank.None);
            else
                _text.Append(' ', indent).Append("- ").Append(Rest(item.Span.Line, item.Span.Column)).Append('\n');
        }
    }

    private static Blank BetweenItems(string key) => key switch
    {
        "rules" => Blank.One,
        "findings" or "add" or "change" or "off" or "claims" => Blank.Kept,
        _ => Blank.None,
    };

    private bool IsInBrackets(YamlNode node) => Rest(node.Span.Line, node.Span.Column) is ['{' or '[', ..];

    private string Cut(int line, int start, int end) => _lines[line][Math.Min(start, _lines[line].Length)..Math.Min(end, _lines[line].Length)];

    private string Rest(int line, int start) => line < _lines.Length ? Cut(line, start, _lines[line].Length).TrimEnd() : "";
}
