using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Knowledge;

/// <summary>Reads rules/sources.yaml.</summary>
public static class SourcesReader
{
    private static readonly string[] _kinds = ["trial", "laboratory", "survey", "review", "consensus", "textbook", "proposal", "data"];
    private static readonly string[] _reads = ["full", "abstract", "secondary", "memory", "own"];

    private static readonly string[] _statuses = ["retracted", "superseded"];

    /// <summary>Reads the bibliography, and which kinds of source can carry a grade.</summary>
    public static (IReadOnlyDictionary<string, Source> Sources, IReadOnlyDictionary<Grade, IReadOnlyList<string>> Carriers) Read(YamlNode? root, DiagnosticBag bag)
    {
        var sources = new Dictionary<string, Source>(StringComparer.Ordinal);
        var map = MapReader.Open(root, "the bibliography", bag);
        foreach (var node in map?.List("sources") ?? [])
        {
            if (ReadOne(node, bag) is not { } source)
                continue;
            if (!sources.TryAdd(source.Id, source))
                bag.Add(Problems.DuplicateId(source.Span, "source", source.Id, sources[source.Id].Span));
        }
        var carriers = ReadCarriers(map?.List("carriers") ?? [], bag);
        map?.Finish();
        return (sources, carriers);
    }

    private static Dictionary<Grade, IReadOnlyList<string>> ReadCarriers(IReadOnlyList<YamlNode> nodes, DiagnosticBag bag)
    {
        var carriers = new Dictionary<Grade, IReadOnlyList<string>>();
        foreach (var map in nodes.Select(n => MapReader.Open(n, "a line on what carries a grade", bag)).OfType<MapReader>())
        {
            var grade = Parse.Grade(map.Required("grade"), bag);
            var kinds = map.Scalars("kinds").Select(k => OneOf(k, "kinds", _kinds, bag)).ToList();
            map.Required("because");
            map.Finish();
            if (grade is { } known)
                carriers[known] = kinds;
        }
        return carriers;
    }

    private static Source? ReadOne(YamlNode node, DiagnosticBag bag)
    {
        var map = MapReader.Open(node, "a source", bag);
        if (map is null)
            return null;
        var id = map.Required("source");
        var cite = map.Required("cite");
        var kind = OneOf(map.Required("kind"), "kind", _kinds, bag);
        var read = OneOf(map.Required("read"), "read", _reads, bag);
        var source = new Source(id?.Value ?? "", cite?.Value ?? "", kind, read, map.Scalar("sample")?.Value, map.Scalar("note")?.Value, id?.Span ?? node.Span)
        {
            Status = map.Scalar("status") is { } status ? OneOf(status, "status", _statuses, bag) : null,
        };
        map.Finish();
        if (id is null)
            return null;
        if (!VocabularyReader.PlainId().IsMatch(id.Value))
            bag.Add(Problems.BadId(id.Span, id.Value));
        return source;
    }

    private static string OneOf(YamlScalar? text, string key, string[] values, DiagnosticBag bag)
    {
        if (text is not null && !values.Contains(text.Value, StringComparer.Ordinal))
            bag.Add(Problems.UnknownValue(text.Span, text.Value, key, values));
        return text?.Value ?? "";
    }
}
