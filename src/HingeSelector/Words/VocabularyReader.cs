using System.Globalization;
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
        var history = _words.GetValueOrDefault(ClearanceTerms.About)?.RuleValues ?? [];
        var clearance = ClearanceTermsReader.Read(map, history, _bag);
        foreach (var node in map.List("variant-words"))
            ReadVariantWord(node);
        map.Finish();
        foreach (var word in ComputedWords.All(_variants, clearance.Covers, history))
            Add(word);
        foreach (var word in _words.Values.Where(w => w.NotBelow is not null && !_words.ContainsKey(w.NotBelow)).ToList())
            _bag.Add(Problems.UnknownWord(word.Span, word.NotBelow!, _words.Keys));
        return new Vocabulary(_words.Values, groups, clearance);
    }

    private WordGroup? ReadGroup(YamlNode node)
    {
        var map = MapReader.Open(node, "a group", _bag);
        if (map is null)
            return null;
        var id = map.Required("group");
        var group = new WordGroup(id?.Value ?? "", map.Required("label")?.Value ?? "", map.Required("blanket")?.Value, map.Required("means")?.Value);
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
            foreach (var key in new[] { "unit", "sides", "worse", "range", "usual", "error", "error share", "error source", "lifetime", "ends when grown", "group", "in force from", "protocol", "values", "values with sides", "what was named stays", "not below", "read by pull" })
                map.Known(key);
            return null;
        }
        var dimension = kind.Value.Dimension;
        var sided = map.Scalar("sides") is not null;
        var values = ReadValues(map, kind.Value.Kind);
        var valueSides = ReadValueSides(map, values);
        var byPull = map.Scalar("read by pull")?.Value == "yes";
        var unit = ReadUnit(map, dimension);
        return new Word
        {
            Id = id.Value,
            Label = label.Value,
            About = about.Value,
            Kind = kind.Value.Kind,
            Dimension = dimension,
            Unit = unit,
            Values = valueSides?.Typed ?? values,
            ValueSides = valueSides,
            Sided = sided,
            ByPull = byPull,
            Readings = sided ? Sides.Names : valueSides is not null ? ValueSides.Readings : byPull ? ["", .. _variants] : [],
            Worse = ReadWorse(map),
            Range = ReadRange(map, "range", dimension),
            Usual = ReadRange(map, "usual", dimension),
            Error = ReadQuantity(map.Scalar("error"), dimension),
            ErrorShare = ReadQuantity(map.Scalar("error share"), Dimension.Share),
            ErrorSource = map.Scalar("error source")?.Value,
            Lifetime = ReadLifetime(map),
            Groups = [.. map.Scalars("group").Select(g => g.Value)],
            InForceFrom = ReadDate(map.Scalar("in force from")) ?? DateOnly.MinValue,
            Protocol = map.Scalar("protocol")?.Value,
            NamedStays = map.Scalar("what was named stays")?.Value == "yes",
            NotBelow = map.Scalar("not below")?.Value,
            Span = id.Span,
        };
    }

    private static WorseEnd ReadWorse(MapReader map) => map.Scalar("worse")?.Value switch
    {
        "lower" => WorseEnd.Lower,
        "higher" => WorseEnd.Higher,
        _ => WorseEnd.None,
    };

    private Unit? ReadUnit(MapReader map, Dimension dimension)
    {
        var text = map.Scalar("unit");
        if (text is null)
            return Unit.PreferredFor(dimension);
        var unit = Unit.Find(text.Value);
        if (unit is not null && unit.Dimension == dimension)
            return unit;
        _bag.Add(Problems.BadQuantity(text.Span, "unit", $"'{text.Value}' does not measure this kind; expected {QuantityText.Expected(dimension)}"));
        return null;
    }

    private (double Low, double High)? ReadRange(MapReader map, string key, Dimension dimension)
    {
        var text = map.Scalar(key);
        if (text is null)
            return null;
        var parts = text.Value.Split(" to ", 2);
        if (parts.Length == 2
            && QuantityText.TryRead(parts[0], dimension, null, out var low, out _)
            && QuantityText.TryRead(parts[1], dimension, null, out var high, out _)
            && low <= high)
        {
            return (low, high);
        }
        _bag.Add(Problems.BadQuantity(text.Span, key, $"'{text.Value}' is not a range; write it like '20 deg to 130 deg'"));
        return null;
    }

    private double? ReadQuantity(YamlScalar? text, Dimension dimension)
    {
        if (text is null)
            return null;
        if (QuantityText.TryRead(text.Value, dimension, null, out var value, out var problem))
            return value;
        _bag.Add(Problems.BadQuantity(text.Span, text.Value, problem!));
        return null;
    }

    private DateOnly? ReadDate(YamlScalar? text)
    {
        if (text is null)
            return null;
        if (DateOnly.TryParseExact(text.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        _bag.Add(Problems.BadDate(text.Span, text.Value));
        return null;
    }

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
