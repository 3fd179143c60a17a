using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>Walks the tree under <c>when</c>; each text is taken apart when it is met first and remembered by its node.</summary>
internal sealed class NaiveConditions(Vocabulary vocabulary, IReadOnlySet<string> findings)
{
    private static readonly string[] _sides = ["left", "right", "worse", "better", "throwing", "other", "gap"];

    private readonly Dictionary<YamlNode, Func<NaiveCase, Answer>> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>Whether all lines hold.</summary>
    public Answer All(YamlMap map, NaiveCase asked)
    {
        var all = Answer.Yes;
        foreach (var (key, value) in map.Entries)
        {
            var one = Line(key, value, asked);
            all = one < all ? one : all;
        }
        return all;
    }

    /// <summary>Words that the lines name, with the reading after the comma; findings are left out.</summary>
    public IEnumerable<(Word Word, string? Reading)> Names(YamlMap map)
    {
        foreach (var (key, value) in map.Entries)
        {
            if (value is YamlList list)
            {
                foreach (var name in list.Items.OfType<YamlMap>().SelectMany(Names))
                    yield return name;
                continue;
            }
            foreach (var name in key.Value.Split(" or ").Select(n => n.Trim()).Where(n => !findings.Contains(n)))
            {
                foreach (var word in WordsOf(name))
                    yield return word;
            }
        }
    }

    private Answer Line(YamlScalar key, YamlNode value, NaiveCase asked)
    {
        if (value is YamlList list)
        {
            var any = Answer.No;
            foreach (var item in list.Items)
            {
                var one = All((YamlMap)item, asked);
                any = one > any ? one : any;
            }
            return key.Value switch
            {
                "any of" => any,
                "none of" => Opposite(any),
                _ => throw new FormatException(key.Value),
            };
        }
        // Scalars of equal text are equal records, so the node itself is the key.
        if (!_known.TryGetValue(value, out var line))
            _known[value] = line = Read(key.Value, ((YamlScalar)value).Value);
        return line(asked);
    }

    private static Answer Opposite(Answer answer) => answer switch
    {
        Answer.Yes => Answer.No,
        Answer.No => Answer.Yes,
        _ => Answer.Unsure,
    };

    private Func<NaiveCase, Answer> Read(string names, string text)
    {
        var tests = new List<Func<NaiveCase, Answer>>();
        foreach (var name in names.Split(" or ").Select(n => n.Trim()))
        {
            if (findings.Contains(name))
                tests.Add(c => text == "is present" ? c.Find(name) : Opposite(c.Find(name)));
            else
                tests.AddRange(WordsOf(name).Select(w => Read(w.Word, w.Reading, text)));
        }
        return tests.Count == 1 ? tests[0] : c => tests.Max(t => t(c));
    }

    private static Func<NaiveCase, Answer> Read(Word word, string? reading, string text)
    {
        var test = NaiveLine.Read(word, text);
        var slot = word.Slot + Offset(word, reading);
        return c => c.Look(word, slot) is var value && value.State == FactState.Known ? test(value)
            : value.State == FactState.NotApplicable ? Answer.No : Answer.Unsure;
    }

    private static int Offset(Word word, string? reading)
    {
        if (reading is null)
            return word.Readings.Count == 0 ? 0 : throw new FormatException(word.Id);
        var place = word.Sided ? Array.IndexOf(_sides, reading) : reading switch
        {
            "standard" => 0,
            "as set up" => 1,
            _ => -1,
        };
        return place >= 0 ? place : throw new FormatException($"{word.Id}, {reading}");
    }

    private IEnumerable<(Word Word, string? Reading)> WordsOf(string name)
    {
        if (name.StartsWith("any ", StringComparison.Ordinal))
            return vocabulary.Words.Where(w => w.Groups.Contains(name[4..])).Select(w => (w, w.Sided ? "worse" : (string?)null));
        var parts = name.Split(',');
        return [(vocabulary.Find(parts[0].Trim()) ?? throw new FormatException(name), parts.Length == 1 ? null : parts[1].Trim())];
    }
}
