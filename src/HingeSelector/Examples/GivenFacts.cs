using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>The facts that an example gives: measured ones as in a screen, computed ones and findings directly.</summary>
internal sealed class GivenFacts
{
    private readonly List<(WordReading Reading, FactValue Value)> _computed = [];

    private GivenFacts(AthleteRecord athlete) => Athlete = athlete;

    /// <summary>The measured facts.</summary>
    public AthleteRecord Athlete { get; }

    /// <summary>Findings that are given directly.</summary>
    public List<(int Finding, Truth Truth)> Findings { get; } = [];

    /// <summary>Reads the given facts.</summary>
    /// <returns>The facts, or null when one is faulty (the bag says which).</returns>
    public static GivenFacts? Read(YamlMap given, RuleBook book, DateOnly day, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        var measured = new List<KeyValuePair<YamlScalar, YamlNode>>();
        var direct = new List<KeyValuePair<YamlScalar, YamlNode>>();
        foreach (var entry in given.Entries)
        {
            var word = book.Vocabulary.Find(entry.Key.Value);
            (word is { IsMeasured: true } || entry.Key.Value == "clearances" ? measured : direct).Add(entry);
        }
        var record = ScreenReader.ReadUndated(new YamlMap(measured, given.Span), "example", book.Vocabulary, day, bag);
        if (record is null)
            return null;
        var facts = new GivenFacts(record);
        foreach (var (key, value) in direct)
            facts.ReadDirect(key, value, book, bag);
        return bag.ErrorCount == before ? facts : null;
    }

    /// <summary>Writes the computed facts of the athlete over what was worked out.</summary>
    public void WriteAthlete(FactValue[] table) => Write(table, false);

    /// <summary>Writes the computed facts of the candidate over what was worked out.</summary>
    public void WriteCandidate(FactValue[] table) => Write(table, true);

    private void Write(FactValue[] table, bool ofCandidate)
    {
        foreach (var (reading, value) in _computed.Where(c => c.Reading.Word.OfCandidate == ofCandidate))
            table[reading.Slot] = value;
    }

    private void ReadDirect(YamlScalar key, YamlNode node, RuleBook book, DiagnosticBag bag)
    {
        var findings = book.Findings.ToDictionary(f => f.Id, StringComparer.Ordinal);
        if (findings.TryGetValue(key.Value, out var finding))
        {
            Findings.Add((finding.Index, node is YamlScalar { Value: "is absent" or "absent" or "no" } ? Truth.False : Truth.True));
            return;
        }
        var reading = new Rules.Reading.ConditionReader(book.Vocabulary, findings, bag).FindReading(key.Value, key.Span);
        if (reading is not null && ReadValue(reading.Word, node, bag) is { } value)
            _computed.Add((reading, value));
    }

    private static FactValue? ReadValue(Word word, YamlNode node, DiagnosticBag bag)
    {
        var texts = node switch
        {
            YamlScalar { Value: "none" } when word.Kind == WordKind.Set => [],
            YamlScalar one => word.Kind == WordKind.Set ? [.. one.Value.Split(" + ").Select(v => one with { Value = v })] : [one],
            YamlList list => list.Items.OfType<YamlScalar>().ToList(),
            _ => (List<YamlScalar>)[],
        };
        if (word.Kind == WordKind.Number)
            return ReadNumber(word, texts, node, bag);
        var bits = 0UL;
        foreach (var text in texts)
        {
            if (text.Value == "not applicable")
                return FactValue.NotApplicable;
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

    private static FactValue? ReadNumber(Word word, List<YamlScalar> texts, YamlNode node, DiagnosticBag bag)
    {
        if (texts is [{ Value: "not applicable" }])
            return FactValue.NotApplicable;
        if (texts is [var one] && QuantityText.TryRead(one.Value, word.Dimension, word.Unit, out var number, out _))
            return FactValue.Number(number);
        bag.Add(Problems.BadQuantity(node.Span, word.Id, $"expected one number with a unit such as '{word.Print(1)}'"));
        return null;
    }
}
