using HingeSelector.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace HingeSelector.Reading;

/// <summary>YAML text to a tree with places. The only user of the YAML library.</summary>
/// <remarks>
/// Refuses what staff files never need and what different readers take differently: anchors, aliases, tags,
/// tabs as indentation, repeated keys, several documents in one file, keys that are not plain text.
/// Files in plain YAML without a fault never come to the library: <see cref="PlainYaml"/> reads them.
/// </remarks>
public sealed class YamlReader
{
    private const int DeepestNesting = 32;

    private readonly SourceText _source;
    private readonly DiagnosticBag _bag;
    private Mark _last = Mark.Empty;

    private YamlReader(SourceText source, DiagnosticBag bag)
    {
        _source = source;
        _bag = bag;
    }

    /// <summary>Reads one file.</summary>
    /// <returns>The root node, or null when the text is empty or faulty (the bag says why).</returns>
    public static YamlNode? Read(SourceText source, DiagnosticBag bag)
        => PlainYaml.Read(source) ?? ReadByLibrary(source, bag);

    /// <summary>Reads one file by the library alone.</summary>
    internal static YamlNode? ReadByLibrary(SourceText source, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        var root = new YamlReader(source, bag).Read();
        return bag.ErrorCount == before ? root : null;
    }

    private YamlNode? Read()
    {
        if (ReportTabs())
            return null;
        try
        {
            var parser = new Parser(new StringReader(_source.Text));
            parser.Consume<StreamStart>();
            if (parser.TryConsume<StreamEnd>(out _))
            {
                _bag.Add(Problems.EmptyFile(Span(Mark.Empty, 1)));
                return null;
            }
            parser.Consume<DocumentStart>();
            var root = ReadNode(parser, 0);
            parser.Consume<DocumentEnd>();
            if (parser.Current is DocumentStart second || parser.Accept<DocumentStart>(out second!))
                _bag.Add(Problems.SecondDocument(Span(second.Start, 3)));
            return root;
        }
        catch (YamlException e)
        {
            _bag.Add(Problems.NotYaml(Span(e.Start, 1), e.InnerException?.Message ?? e.Message));
        }
        catch (InvalidOperationException)
        {
            // A malformed list or map in brackets makes the library throw this instead of its own exception, without a place or a reason.
            _bag.Add(Problems.NotYaml(Span(_last, 1), "a bracket is not closed, or a comma is missing"));
        }
        return null;
    }

    private bool ReportTabs()
    {
        var found = false;
        var lines = _source.Text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            var indent = lines[i].Length - lines[i].TrimStart(' ', '\t').Length;
            var tab = lines[i].IndexOf('\t', 0, indent);
            if (tab < 0 || lines[i].Trim().Length == 0)
                continue;
            _bag.Add(Problems.Tab(new SourceSpan(_source, i, tab, 1)));
            found = true;
        }
        return found;
    }

    private YamlNode ReadNode(Parser parser, int depth)
    {
        var current = parser.Current ?? throw new YamlException(_last, _last, "The file ends in the middle of a value.");
        _last = current.Start;
        if (depth > DeepestNesting)
            throw new YamlException(current.Start, current.End, $"Nested more than {DeepestNesting} deep.");
        ReportAnchorOrTag(current);
        if (parser.TryConsume<Scalar>(out var scalar))
            return new YamlScalar(scalar.Value, scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted, Span(scalar.Start, scalar.End));
        if (parser.TryConsume<SequenceStart>(out var list))
            return ReadList(parser, list, depth);
        if (parser.TryConsume<MappingStart>(out var map))
            return ReadMap(parser, map, depth);
        if (parser.TryConsume<AnchorAlias>(out var alias))
            return new YamlScalar("", false, Span(alias.Start, alias.End));
        throw new YamlException(current.Start, current.End, "A value was expected here.");
    }

    private void ReportAnchorOrTag(ParsingEvent current)
    {
        if (current is AnchorAlias alias)
            _bag.Add(Problems.Anchor(Span(alias.Start, alias.End), "*" + alias.Value));
        if (current is not NodeEvent node)
            return;
        if (!node.Anchor.IsEmpty)
            _bag.Add(Problems.Anchor(Span(node.Start, node.End), "&" + node.Anchor.Value));
        if (!node.Tag.IsEmpty)
            _bag.Add(Problems.Tag(Span(node.Start, node.End), node.Tag.IsNonSpecific ? "!" : node.Tag.Value));
    }

    private YamlList ReadList(Parser parser, SequenceStart start, int depth)
    {
        var items = new List<YamlNode>();
        while (!parser.TryConsume<SequenceEnd>(out _))
            items.Add(ReadNode(parser, depth + 1));
        return new YamlList(items, Span(start.Start, 1));
    }

    private YamlMap ReadMap(Parser parser, MappingStart start, int depth)
    {
        var entries = new List<KeyValuePair<YamlScalar, YamlNode>>();
        var seen = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var key = ReadNode(parser, depth + 1);
            var value = ReadNode(parser, depth + 1);
            if (key is not YamlScalar name)
            {
                _bag.Add(Problems.KeyIsNotText(key.Span));
                continue;
            }
            if (seen.TryGetValue(name.Value, out var first))
                _bag.Add(Problems.RepeatedKey(name.Span, name.Value, first));
            else
                seen.Add(name.Value, name.Span);
            entries.Add(new(name, value));
        }
        return new YamlMap(entries, Span(start.Start, 1));
    }

    private SourceSpan Span(Mark start, Mark end)
        => Span(start, end.Line == start.Line ? Math.Max(1, (int)(end.Column - start.Column)) : 1);

    private SourceSpan Span(Mark start, int length)
        => new(_source, Math.Max(0, (int)start.Line - 1), Math.Max(0, (int)start.Column - 1), length);
}
