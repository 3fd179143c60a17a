using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Reading;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>Reads the facts of examples.</summary>
/// <param name="book">The rules.</param>
/// <param name="day">The day of the examples.</param>
/// <param name="bag">Collects faults.</param>
internal sealed class GivenReader(RuleBook book, DateOnly day, DiagnosticBag bag)
{
    /// <summary>Before the name of a group: the value is that of every word of it.</summary>
    public const string AllOfGroup = "all ";

    private static readonly IReadOnlyDictionary<AnswerKey, Answer> _noAnswers = new Dictionary<AnswerKey, Answer>();
    private static readonly HashSet<string> _noWords = [];

    private readonly Dictionary<string, Finding> _findings = book.Findings.ToDictionary(f => f.Id, StringComparer.Ordinal);

    /// <summary>Reads a map of facts.</summary>
    /// <returns>The facts, or null when one is faulty (the bag says which).</returns>
    public GivenFacts? Read(YamlMap given)
    {
        var before = bag.ErrorCount;
        var measured = new List<KeyValuePair<YamlScalar, YamlNode>>();
        var readings = new List<(WordReading, FactValue)>();
        var findings = new List<(int, Truth)>();
        foreach (var (key, value) in given.Entries)
        {
            if (key.Value.StartsWith(AllOfGroup, StringComparison.Ordinal))
                SpreadGroup(key, value, given, measured);
            else if (key.Value == GivenFacts.ClearancesKey || book.Vocabulary.Find(key.Value) is { IsMeasured: true })
                measured.Add(new(key, value));
            else if (_findings.TryGetValue(key.Value, out var finding))
                findings.Add((finding.Index, ReadFinding(value)));
            else if (Reading(key) is { } reading && ReadValue(reading.Word, value) is { } read)
                readings.Add((reading, read));
        }
        var record = measured.Count == 0 ? null : ReadMeasured(measured, given.Span);
        var words = measured.Count == 0 ? _noWords : measured.Select(m => m.Key.Value).ToHashSet(StringComparer.Ordinal);
        return bag.ErrorCount == before ? new GivenFacts(record?.Answers ?? _noAnswers, record?.Clearances ?? [], record?.HeldHeights ?? [], words, readings, findings) : null;
    }

    /// <summary>Finds a word with its reading; reports what is wrong.</summary>
    public WordReading? Reading(YamlScalar name) => new ConditionReader(book.Vocabulary, _findings, bag).FindReading(name.Value, name.Span);

    private AthleteRecord? ReadMeasured(List<KeyValuePair<YamlScalar, YamlNode>> measured, SourceSpan at)
    {
        // An example may lie where nobody measures twice; only what cannot be read is a fault.
        var faults = new DiagnosticBag();
        var record = ScreenReader.ReadUndated(new YamlMap(measured, at), "example", book.Vocabulary, day, faults);
        foreach (var fault in faults.Sorted.Where(f => f.Severity == Severity.Error))
            bag.Add(fault);
        return record;
    }

    // "all pain-worst: 2 points" speaks for every word of the group that the example does not name itself.
    private void SpreadGroup(YamlScalar key, YamlNode value, YamlMap given, List<KeyValuePair<YamlScalar, YamlNode>> measured)
    {
        var words = book.Vocabulary.InGroup(key.Value[AllOfGroup.Length..]);
        if (words.Count == 0)
            bag.Add(Problems.UnknownValue(key.Span, key.Value[AllOfGroup.Length..], "all", book.Vocabulary.GroupIds));
        foreach (var word in words.Where(w => given.Find(w.Id) is null))
        {
            YamlNode answer = word.Sided
                ? new YamlMap([.. new[] { Sides.Left, Sides.Right }.Select(s => new KeyValuePair<YamlScalar, YamlNode>(key with { Value = Sides.Names[s] }, value))], value.Span)
                : value;
            measured.Add(new(key with { Value = word.Id }, answer));
        }
    }

    private static Truth ReadFinding(YamlNode node) => node switch
    {
        YamlScalar { Value: "is absent" or "absent" or "no" } => Truth.False,
        YamlScalar { Value: ExampleReader.NotMeasured } => Truth.Open,
        _ => Truth.True,
    };

    private FactValue? ReadValue(Word word, YamlNode node)
    {
        if (node is YamlScalar { Value: ExampleReader.NotMeasured })
            return FactValue.Missing;
        var texts = node switch
        {
            YamlScalar { Value: "none" } when word.Kind == WordKind.Set => [],
            YamlScalar one => word.Kind == WordKind.Set ? [.. one.Value.Split(" + ").Select(v => one with { Value = v })] : [one],
            YamlList list => list.Items.OfType<YamlScalar>().ToList(),
            _ => (List<YamlScalar>)[],
        };
        if (texts is [{ Value: "not applicable" }])
            return FactValue.NotApplicable;
        return word.Kind == WordKind.Number ? ReadNumber(word, texts, node) : ReadBits(word, texts);
    }

    private FactValue? ReadBits(Word word, List<YamlScalar> texts)
    {
        var bits = 0UL;
        foreach (var text in texts)
        {
            var place = word.Values.ToList().IndexOf(text.Value);
            if (place < 0)
            {
                bag.Add(Problems.UnknownValue(text.Span, text.Value, word.Id, word.Values));
                return null;
            }
            bits |= 1UL << place;
        }
        return FactValue.Of(bits);
    }

    private FactValue? ReadNumber(Word word, List<YamlScalar> texts, YamlNode node)
    {
        if (texts is [var one] && QuantityText.TryRead(one.Value, word.Dimension, word.Unit, out var number, out _))
            return FactValue.Number(number);
        bag.Add(Problems.BadQuantity(node.Span, word.Id, $"expected one number with a unit such as '{word.Print(1)}'"));
        return null;
    }
}
