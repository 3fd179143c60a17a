using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>Walks the tree under <c>when</c>; each map is taken apart when it is met first.</summary>
internal sealed class NaiveConditions(Vocabulary vocabulary, IReadOnlySet<string> findings)
{
    private static readonly string[] _sides = ["left", "right", "worse", "better", "throwing", "other", "gap"];

    // Maps of equal text are equal records, so the node itself is the key.
    private readonly Dictionary<YamlMap, Func<NaiveCase, Answer>[]> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>Whether all lines hold.</summary>
    public Answer All(YamlMap map, NaiveCase asked)
    {
        if (!_known.TryGetValue(map, out var lines))
            _known[map] = lines = [.. map.Entries.Select(e => Line(e.Key.Value, e.Value))];
        var all = Answer.Yes;
        foreach (var line in lines)
        {
            var one = line(asked);
            all = one < all ? one : all;
            if (all == Answer.No)
                break;
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

    private Func<NaiveCase, Answer> Line(string key, YamlNode value)
    {
        if (value is not YamlList list)
            return Read(key, ((YamlScalar)value).Value);
        return key switch
        {
            "any of" => c => Any(list, c),
            "none of" => c => Opposite(Any(list, c)),
            _ => throw new FormatException(key),
        };
    }

    private Answer Any(YamlList list, NaiveCase asked)
    {
        var any = Answer.No;
        foreach (var item in list.Items)
        {
            var one = All((YamlMap)item, asked);
            any = one > any ? one : any;
        }
        return any;
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
        return tests.Count == 1 ? tests[0] : c => Most(tests, c);
    }

    private static Answer Most(List<Func<NaiveCase, Answer>> tests, NaiveCase asked)
    {
        var most = Answer.No;
        foreach (var test in tests)
        {
            var one = test(asked);
            most = one > most ? one : most;
        }
        return most;
    }

    private Func<NaiveCase, Answer> Read(Word word, string? reading, string text)
    {
        var test = NaiveLine.Read(word, text);
        var slot = word.Slot + Offset(word, reading);
        return c => c.Look(word, slot) is var value && value.State == FactState.Known ? test(value)
            : value.State == FactState.NotApplicable ? Answer.No : Answer.Unsure;
    }

    private int Offset(Word word, string? reading)
    {
        if (reading is null)
            return word.Readings.Count == 0 || word.Id is "history" or "held-height" or "held-height-grip" or "held-height-stance" ? 0 : throw new FormatException(word.Id);
        var place = word.Sided ? Array.IndexOf(_sides, reading) : (word.Id, reading) switch
        {
            ("history", _) => 1 + Array.IndexOf(["left", "right", "throwing", "other"], reading),
            ("held-height" or "held-height-grip" or "held-height-stance", _) => 1 + Array.IndexOf([.. vocabulary.Find("variant")!.Values], reading),
            ("letter", _) => Array.IndexOf(["none", "valid", "expired", "not-yet-valid"], reading),
            ("not-cleared", _) => Array.IndexOf(["load-in-hand", "hang-through-arm", "spinal-load", "pull-from-floor", "wide-stance", "leaning-back"], reading),
            (_, "standard") => 0,
            (_, "as set up") => 1,
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
