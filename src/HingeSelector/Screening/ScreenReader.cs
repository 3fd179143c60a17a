using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads the file of one athlete: who, screen, day and clearances.</summary>
/// <remarks>
/// The facts stand under <c>athlete:</c>, <c>screen:</c> and <c>day:</c>, or without sections at the top of the file;
/// then each goes to the section that its word belongs to. All faults of a file are reported at once and nothing is half loaded.
/// </remarks>
public sealed class ScreenReader
{
    private static readonly IReadOnlyDictionary<string, WordAbout> _sections = new Dictionary<string, WordAbout>(StringComparer.Ordinal)
    {
        ["athlete"] = WordAbout.Athlete,
        ["screen"] = WordAbout.Screen,
        ["day"] = WordAbout.Day,
    };

    /// <summary>Keys that are no words; spaces and hyphens are the same in them.</summary>
    private static readonly string[] _topKeys = ["id", "date", "screen-date", "day-date", "measured-by", "asked-by", "clearances", "held-heights", .. _sections.Keys];

    private static readonly string[] _sectionKeys = ["date", "measured-by", "asked-by"];

    private readonly Vocabulary _vocabulary;
    private readonly DateOnly _on;
    private readonly DiagnosticBag _bag;
    private readonly RecordDraft _draft;
    private readonly FactNodeReader _facts;
    private readonly IReadOnlyList<string> _words;
    private string _id;

    private ScreenReader(string id, Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
    {
        _id = id;
        _vocabulary = vocabulary;
        _on = on;
        _bag = bag;
        _draft = new RecordDraft(vocabulary, on, bag);
        _facts = new FactNodeReader(_draft, on, bag);
        _words = [.. vocabulary.Words.Where(w => w.IsMeasured).Select(w => w.Id), .. vocabulary.Groups.Where(g => g.Blanket is not null).Select(g => g.Id)];
    }

    /// <summary>Reads one file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="on">Day of the answer.</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The record, or null when there were faults.</returns>
    public static AthleteRecord? Read(SourceText source, Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
        => YamlReader.Read(ByteOrderMark.Without(source), bag) is { } root ? Read(root, FileName(source.Path), vocabulary, on, bag) : null;

    /// <summary>Reads facts that stand inside another file and have no date of their own, such as the example of a rule.</summary>
    /// <param name="facts">The map of facts, with or without sections.</param>
    /// <param name="id">Id of the athlete where the map gives none.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="on">Day of the answers and of the decision.</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The record, or null when there were faults.</returns>
    public static AthleteRecord? ReadUndated(YamlMap facts, string id, Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
    {
        var reader = new ScreenReader(id, vocabulary, on, bag);
        foreach (var about in _sections.Values)
            reader._draft.Head(about).Date = on;
        return reader.Read(facts);
    }

    private static AthleteRecord? Read(YamlNode root, string id, Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
    {
        if (root is YamlMap map)
            return new ScreenReader(id, vocabulary, on, bag).Read(map);
        bag.Add(Problems.WrongShape(root.Span, "A screen", "a map of keys and values", root.KindName));
        return null;
    }

    private AthleteRecord? Read(YamlMap map)
    {
        var before = _bag.ErrorCount;
        foreach (var (key, value) in map.Entries)
        {
            if (_sections.TryGetValue(key.Value, out var about))
                ReadSection(key.Value, about, value);
            else if (!ReadTopKey(key, value))
                ReadFact(key, value, null, _topKeys);
        }
        var record = _draft.Finish(_id);
        return _bag.ErrorCount == before ? record : null;
    }

    private bool ReadTopKey(YamlScalar key, YamlNode value)
    {
        switch (Plain(key))
        {
            case "id":
                ReadId(key, value);
                return true;
            case "clearances":
                ReadClearances(value);
                return true;
            case "held-heights":
                ReadHeld(value);
                return true;
            case "date":
                if (Scalar(key, value) is { } date)
                {
                    _draft.Screen.ReadDate(date, "The screen", _on, _bag);
                    _draft.Day.ReadDate(date, "The screen", _on, _bag);
                }
                return true;
            case "screen-date":
                if (Scalar(key, value) is { } screenDate)
                    _draft.Screen.ReadDate(screenDate, "The screen", _on, _bag);
                return true;
            case "day-date":
                if (Scalar(key, value) is { } dayDate)
                    _draft.Day.ReadDate(dayDate, "The day", _on, _bag);
                return true;
            case "measured-by":
                _draft.Athlete.By = _draft.Screen.By = Name(key, value);
                return true;
            case "asked-by":
                _draft.Day.By = Name(key, value);
                return true;
            default:
                return false;
        }
    }

    private void ReadSection(string name, WordAbout about, YamlNode node)
    {
        if (node is YamlScalar { Value.Length: 0 })
            return;
        if (node is not YamlMap map)
        {
            _bag.Add(Problems.WrongShape(node.Span, $"'{name}'", "a map of keys and values", node.KindName));
            return;
        }
        var head = _draft.Head(about);
        foreach (var (key, value) in map.Entries)
        {
            switch (Plain(key))
            {
                case "date":
                    if (Scalar(key, value) is { } date)
                        head.ReadDate(date, about == WordAbout.Athlete ? "The section 'athlete'" : $"The {name}", _on, _bag);
                    break;
                case "measured-by" or "asked-by":
                    head.By = Name(key, value) ?? head.By;
                    break;
                case "id" when about == WordAbout.Athlete:
                    ReadId(key, value);
                    break;
                case "clearances" when about == WordAbout.Athlete:
                    ReadClearances(value);
                    break;
                case "held-heights" when about == WordAbout.Screen:
                    ReadHeld(value);
                    break;
                default:
                    ReadFact(key, value, name, _sectionKeys);
                    break;
            }
        }
    }

    private void ReadFact(YamlScalar key, YamlNode value, string? section, IEnumerable<string> keys)
    {
        var word = _vocabulary.Find(key.Value);
        if (word is { IsMeasured: true })
        {
            // A misplaced answer is still looked at for faults of its own, but takes no part in the record.
            (IsInPlace(key, word.About, section) ? _facts : new FactNodeReader(new RecordDraft(_vocabulary, _on, _bag), _on, _bag)).Read(word, key, value);
        }
        else if (word is not null)
        {
            _bag.Add(Problems.NotTyped(key.Span, word.Id, AnswerText.WhyNotTyped(word)));
        }
        else if (_vocabulary.GroupIds.Contains(key.Value))
        {
            if (IsInPlace(key, _vocabulary.InGroup(key.Value)[0].About, section))
                ReadBlanket(key, value);
        }
        else
        {
            _bag.Add(Problems.UnknownWord(key.Span, key.Value, [.. _words, .. keys]));
        }
    }

    private bool IsInPlace(YamlScalar key, WordAbout about, string? section)
    {
        if (section is null || _sections[section] == about)
            return true;
        _bag.Add(Problems.WrongSection(key.Span, key.Value, section, about.ToString().ToLowerInvariant()));
        return false;
    }

    private void ReadBlanket(YamlScalar key, YamlNode value)
    {
        var group = _vocabulary.Groups.FirstOrDefault(g => g.Id == key.Value && g.Blanket is not null);
        if (group is null)
            _bag.Add(Problems.GroupWithoutBlanket(key.Span, key.Value));
        else if (Scalar(key, value) is { } typed)
            _draft.Add(BlanketText.Read(group, typed, _on, _bag));
    }

    private void ReadId(YamlScalar key, YamlNode value)
    {
        if (Scalar(key, value) is not { IsBlank: false } typed)
            return;
        if (!typed.Quoted && Trap.IsOne(typed.Text))
            _bag.Add(Problems.YamlTrap(typed.Span, typed.Text, "the id of an athlete") with { Hint = $"Quote it: '{typed.Text}'." });
        _id = typed.Text.Trim();
    }

    private void ReadClearances(YamlNode value)
    {
        var reader = new ClearanceReader(_vocabulary, _bag);
        foreach (var item in Items(value, "'clearances'", "a list of clearances"))
            _draft.Add(reader.Read(item));
    }

    private void ReadHeld(YamlNode value)
    {
        var reader = new HeldReader(_vocabulary, _on, _bag);
        foreach (var item in Items(value, "'held-heights'", "a list of held heights"))
            _draft.Add(reader.Read(item));
    }

    private IReadOnlyList<YamlNode> Items(YamlNode value, string what, string expected)
    {
        if (value is YamlList list)
            return list.Items;
        if (value is not YamlScalar { Value: "" or "none" })
            _bag.Add(Problems.WrongShape(value.Span, what, expected, value.KindName));
        return [];
    }

    private string? Name(YamlScalar key, YamlNode value) => Scalar(key, value) is { IsBlank: false } typed ? typed.Text.Trim() : null;

    private Typed? Scalar(YamlScalar key, YamlNode value)
    {
        if (value is YamlScalar scalar)
            return Typed.From(scalar);
        _bag.Add(Problems.WrongShape(value.Span, $"'{key.Value}'", "a single value", value.KindName));
        return null;
    }

    private static string Plain(YamlScalar key) => key.Value.Replace(' ', '-');

    private static string FileName(string path) => Path.GetFileNameWithoutExtension(path);
}
