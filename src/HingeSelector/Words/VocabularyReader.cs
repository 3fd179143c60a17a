using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Words;

/// <summary>Reads rules/vocabulary.yaml.</summary>
public sealed partial class VocabularyReader
{
    private static readonly IReadOnlyDictionary<string, WordAbout> _sections = new Dictionary<string, WordAbout>(StringComparer.Ordinal)
    {
        ["athlete"] = WordAbout.Athlete,
        ["screen"] = WordAbout.Screen,
        ["day"] = WordAbout.Day,
    };

    private static readonly IReadOnlyDictionary<string, (WordKind Kind, Dimension Dimension)> _kinds = new Dictionary<string, (WordKind, Dimension)>(StringComparer.Ordinal)
    {
        ["angle"] = (WordKind.Number, Dimension.Angle),
        ["length"] = (WordKind.Number, Dimension.Length),
        ["mass"] = (WordKind.Number, Dimension.Mass),
        ["time"] = (WordKind.Number, Dimension.Time),
        ["rating"] = (WordKind.Number, Dimension.Rating),
        ["share"] = (WordKind.Number, Dimension.Share),
        ["multiple"] = (WordKind.Number, Dimension.BodyMassMultiple),
        ["count"] = (WordKind.Number, Dimension.None),
        ["yes-no"] = (WordKind.Choice, Dimension.None),
        ["choice"] = (WordKind.Choice, Dimension.None),
        ["set"] = (WordKind.Set, Dimension.None),
        ["text"] = (WordKind.Text, Dimension.None),
        ["date"] = (WordKind.Date, Dimension.None),
    };

    private readonly IReadOnlyList<string> _variants;
    private readonly DiagnosticBag _bag;
    private readonly Dictionary<string, Word> _words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<string>> _lists = new(StringComparer.Ordinal);

    private VocabularyReader(IReadOnlyList<string> variants, DiagnosticBag bag)
    {
        _variants = variants;
        _bag = bag;
    }

    /// <summary>Reads the vocabulary.</summary>
    /// <param name="root">The file's tree.</param>
    /// <param name="variants">Ids of the variants, for words whose values are variants.</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The vocabulary, or null when the tree is no map.</returns>
    public static Vocabulary? Read(YamlNode? root, IReadOnlyList<string> variants, DiagnosticBag bag)
        => MapReader.Open(root, "the vocabulary", bag) is { } map ? new VocabularyReader(variants, bag).Read(map) : null;

    private Vocabulary Read(MapReader map)
    {
        if (map.Node("lists") is YamlMap lists)
        {
            foreach (var (key, _) in lists.Entries)
                _lists[key.Value] = [.. MapReader.Open(lists, "the lists", _bag)!.Scalars(key.Value).Select(s => s.Value)];
        }
        var groups = map.List("groups").Select(ReadGroup).OfType<WordGroup>().ToList();
        foreach (var node in map.List("facts"))
            ReadFact(node);
        var covers = map.Scalars("clearance-covers").Select(s => s.Value).ToList();
        foreach (var node in map.List("variant-words"))
            ReadVariantWord(node);
        map.Finish();
        foreach (var word in ComputedWords.All(_variants, covers))
            Add(word);
        foreach (var word in _words.Values.Where(w => w.NotBelow is not null && !_words.ContainsKey(w.NotBelow)).ToList())
            _bag.Add(Problems.UnknownWord(word.Span, word.NotBelow!, _words.Keys));
        return new Vocabulary(_words.Values, groups, covers);
    }

    private WordGroup? ReadGroup(YamlNode node)
    {
        var map = MapReader.Open(node, "a group", _bag);
        if (map is null)
            return null;
        var id = map.Required("group");
        var group = new WordGroup(id?.Value ?? "", map.Required("label")?.Value ?? "", map.Required("blanket")?.Value, map.Required("means")?.Value, map.Scalar("not suggested")?.Value);
        map.Finish();
        return id is null ? null : group;
    }

    private void ReadVariantWord(YamlNode node)
    {
        var map = MapReader.Open(node, "a word of the variants", _bag);
        if (map is null)
            return;
        var id = RequiredId(map, "word");
        var label = map.Required("label");
        var values = map.Scalars("values");
        var many = map.Scalar("many")?.Value == "yes";
        map.Finish();
        if (values.Count == 0)
            _bag.Add(Problems.MissingKey(map.Span, "values", "a word of the variants"));
        if (id is null || label is null)
            return;
        Add(new Word
        {
            Id = id.Value,
            Label = label.Value,
            About = WordAbout.Variant,
            Kind = many ? WordKind.Set : WordKind.Choice,
            Values = [.. values.Select(v => v.Value)],
            Many = many,
            Span = id.Span,
        });
    }

    private void ReadFact(YamlNode node)
    {
        var map = MapReader.Open(node, "a fact", _bag);
        if (map is null)
            return;
        var forEach = map.Scalar("for each");
        var before = _bag.ErrorCount;
        var word = ReadWord(map, forEach is not null);
        map.Finish();
        if (word is null || _bag.ErrorCount != before)
            return;
        if (forEach is null)
        {
            Add(word);
            return;
        }
        if (!_lists.TryGetValue(forEach.Value, out var items))
        {
            _bag.Add(Problems.UnknownValue(forEach.Span, forEach.Value, "for each", _lists.Keys));
            return;
        }
        foreach (var item in items)
            Add(word with { Id = Fill(word.Id, item), NotBelow = word.NotBelow is { } floor ? Fill(floor, item) : null, Label = Sentence(Fill(word.Label, item.Replace('-', ' '))) });
    }

    private static string Fill(string text, string item) => text.Replace("{site}", item, StringComparison.Ordinal);

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private Word? ReadWord(MapReader map, bool template)
    {
        var id = template ? map.Required("fact") : RequiredId(map, "fact");
        var label = map.Required("label");
        var about = Pick(map, "about", _sections);
        var kind = Pick(map, "kind", _kinds);
        if (id is null || label is null || about is null || kind is null)
        {
            foreach (var key in new[] { "unit", "sides", "worse", "range", "usual", "error", "error share", "error source", "lifetime", "ends when grown", "group", "in force from", "protocol", "values", "minutes", "typical", "not suggested", "what was named stays", "not below" })
                map.Known(key);
            return null;
        }
        var dimension = kind.Value.Dimension;
        var sided = map.Scalar("sides") is not null;
        var unit = ReadUnit(map, dimension);
        return new Word
        {
            Id = id.Value,
            Label = label.Value,
            About = about.Value,
            Kind = kind.Value.Kind,
            Dimension = dimension,
            Unit = unit,
            Values = ReadValues(map, kind.Value.Kind),
            Sided = sided,
            Readings = sided ? Sides.Names : [],
            Worse = ReadWorse(map),
            Range = ReadRange(map, "range", dimension),
            Usual = ReadRange(map, "usual", dimension),
            Error = ReadQuantity(map.Scalar("error"), dimension),
            ErrorShare = ReadQuantity(map.Scalar("error share"), Dimension.Share),
            ErrorSource = map.Scalar("error source")?.Value,
            Lifetime = ReadLifetime(map),
            Groups = [.. map.Scalars("group").Select(g => g.Value)],
            InForceFrom = ReadDate(map.Scalar("in force from")) ?? DateOnly.MinValue,
            Minutes = map.Scalar("minutes") is { } minutes ? ReadMinutes(minutes) : null,
            Typical = map.Node("typical") is { } typical ? ReadTypical(typical, dimension, sided) : null,
            NotSuggested = map.Scalar("not suggested")?.Value,
            Protocol = map.Scalar("protocol")?.Value,
            NamedStays = map.Scalar("what was named stays")?.Value == "yes",
            NotBelow = map.Scalar("not below")?.Value,
            Span = id.Span,
        };
    }

    private IReadOnlyList<string> ReadValues(MapReader map, WordKind kind)
    {
        var node = map.Node("values");
        if (node is YamlScalar { Value: "variants" })
            return _variants;
        if (kind is not (WordKind.Choice or WordKind.Set))
            return [];
        var values = map.Scalars("values").Select(v => v.Value).ToList();
        if (values.Count == 0)
            return ["no", "yes"];
        if (values.Count > 64)
            _bag.Add(Problems.TooMany(map.Span, "values of one word", 64));
        return values;
    }

    private static WorseEnd ReadWorse(MapReader map) => map.Scalar("worse")?.Value switch
    {
        "lower" => WorseEnd.Lower,
        "higher" => WorseEnd.Higher,
        _ => WorseEnd.None,
    };

    private T? Pick<T>(MapReader map, string key, IReadOnlyDictionary<string, T> choices)
        where T : struct
    {
        var text = map.Required(key);
        if (text is null)
            return null;
        if (choices.TryGetValue(text.Value, out var value))
            return value;
        _bag.Add(Problems.UnknownValue(text.Span, text.Value, key, [.. choices.Keys]));
        return null;
    }

    private YamlScalar? RequiredId(MapReader map, string key)
    {
        var id = map.Required(key);
        if (id is null || PlainId().IsMatch(id.Value))
            return id;
        _bag.Add(Problems.BadId(id.Span, id.Value));
        return null;
    }

    private void Add(Word word)
    {
        if (_words.TryGetValue(word.Id, out var first))
            _bag.Add(Problems.DuplicateId(word.Span, "word", word.Id, first.Span));
        else
            _words.Add(word.Id, word);
    }

    /// <summary>The form of every id.</summary>
    [GeneratedRegex("^[a-z][a-z0-9-]*$", RegexOptions.CultureInvariant)]
    public static partial Regex PlainId();
}
