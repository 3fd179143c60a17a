using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads what must hold for a word: <c>below 65 deg</c>, <c>is yes</c>, <c>includes hernia</c>.</summary>
public sealed class ConditionTextReader(DiagnosticBag bag)
{
    private const string NumberForms = "'below 65 deg', 'at most 65 deg', 'above 65 deg', 'at least 65 deg', 'from 50 to 65 deg', 'between 50 and 65 deg' or 'exactly 65 deg'";

    private static readonly (string Start, Func<double, Interval> Make)[] _oneEnd =
    [
        ("below ", v => Interval.Below(v, false)),
        ("at most ", v => Interval.Below(v, true)),
        ("above ", v => Interval.Above(v, false)),
        ("at least ", v => Interval.Above(v, true)),
        ("exactly ", v => new Interval(v, true, v, true)),
    ];

    /// <summary>Reads one condition, or reports why it cannot be read.</summary>
    public Condition? Read(WordReading reading, YamlScalar text, YamlScalar key)
    {
        var full = $"{reading}: {text.Value}";
        switch (reading.Word.Kind)
        {
            case WordKind.Number:
                return ReadInterval(reading, text) is { } interval ? new NumberCondition(reading, interval, full, key.Span) : null;
            case WordKind.Choice:
                return ReadChoice(reading, text, full, key.Span);
            case WordKind.Set:
                return ReadSet(reading, text, full, key.Span);
            default:
                bag.Add(Problems.BadCondition(text.Span, reading.Word.Id, text.Value, "no condition: rules do not read free text or dates"));
                return null;
        }
    }

    private Interval? ReadInterval(WordReading reading, YamlScalar text)
    {
        var condition = text.Value;
        foreach (var (start, make) in _oneEnd)
        {
            if (condition.StartsWith(start, StringComparison.Ordinal))
                return ReadNumber(reading, condition[start.Length..], text.Span) is { } value ? make(value) : null;
        }
        if (condition.StartsWith("from ", StringComparison.Ordinal))
            return ReadTwoEnds(reading, condition["from ".Length..].Split(" to ", 2), true, text);
        if (condition.StartsWith("between ", StringComparison.Ordinal))
            return ReadTwoEnds(reading, condition["between ".Length..].Split(" and ", 2), false, text);
        bag.Add(Problems.BadCondition(text.Span, reading.Word.Id, condition, NumberForms));
        return null;
    }

    private Interval? ReadTwoEnds(WordReading reading, string[] ends, bool highIn, YamlScalar text)
    {
        if (ends.Length != 2)
        {
            bag.Add(Problems.BadCondition(text.Span, reading.Word.Id, text.Value, NumberForms));
            return null;
        }
        // "from 50 to 65 deg": the unit of the second number holds for both.
        var unit = Unit.All.FirstOrDefault(u => ends[1].EndsWith(u.Symbol, StringComparison.Ordinal) && ends[1].Length > u.Symbol.Length && !char.IsLetter(ends[1][^(u.Symbol.Length + 1)]));
        if (double.TryParse(ends[0], System.Globalization.CultureInfo.InvariantCulture, out _) && unit is not null)
            ends[0] = $"{ends[0]} {unit.Symbol}";
        if (ReadNumber(reading, ends[0], text.Span) is not { } low || ReadNumber(reading, ends[1], text.Span) is not { } high)
            return null;
        var interval = new Interval(low, true, high, highIn);
        if (!interval.IsEmpty)
            return interval;
        bag.Add(Problems.EmptyRange(text.Span, text.Value));
        return null;
    }

    private double? ReadNumber(WordReading reading, string text, SourceSpan span)
    {
        var word = reading.Word;
        if (!QuantityText.TryRead(text, word.Dimension, null, out var value, out var problem))
        {
            bag.Add(Problems.BadQuantity(span, word.Id, problem!));
            return null;
        }
        // A gap or a computed difference has no range of its own.
        if (word.Range is { } range && reading.Name != Sides.Names[Sides.Gap] && (value < range.Low - 1e-9 || value > range.High + 1e-9))
        {
            bag.Add(Problems.OutOfRange(span, word.Id, word.Print(value), word.Print(range.Low), word.Print(range.High)));
            return null;
        }
        return value;
    }

    private ValuesCondition? ReadChoice(WordReading reading, YamlScalar text, string full, SourceSpan span)
    {
        const string not = "is not ";
        const string isStart = "is ";
        var negated = text.Value.StartsWith(not, StringComparison.Ordinal);
        if (!negated && !text.Value.StartsWith(isStart, StringComparison.Ordinal))
        {
            var example = reading.Word.Values is ["no", "yes"] ? "'is yes' or 'is no'" : $"'is {reading.Word.Values[0]}' or 'is not {reading.Word.Values[0]}'";
            bag.Add(Trap.IsOne(text.Value) && !text.Quoted
                ? Problems.YamlTrap(text.Span, text.Value, example)
                : Problems.BadCondition(text.Span, reading.Word.Id, text.Value, example));
            return null;
        }
        var mask = ReadValues(reading, text.Value[(negated ? not : isStart).Length..], text.Span);
        return mask is { } bits ? new ValuesCondition(reading, bits, !negated, full, span) : null;
    }

    private ValuesCondition? ReadSet(WordReading reading, YamlScalar text, string full, SourceSpan span)
    {
        const string includes = "includes ";
        const string lacks = "does not include ";
        var all = reading.Word.Values.Count == 64 ? ulong.MaxValue : (1UL << reading.Word.Values.Count) - 1;
        var condition = text.Value;
        if (condition is "is empty" or "is not empty")
            return new ValuesCondition(reading, all, condition == "is not empty", full, span);
        if (condition.StartsWith(includes, StringComparison.Ordinal))
            return ReadValues(reading, condition[includes.Length..], text.Span) is { } wanted ? new ValuesCondition(reading, wanted, true, full, span) : null;
        if (condition.StartsWith(lacks, StringComparison.Ordinal))
            return ReadValues(reading, condition[lacks.Length..], text.Span) is { } unwanted ? new ValuesCondition(reading, unwanted, false, full, span) : null;
        bag.Add(Problems.BadCondition(text.Span, reading.Word.Id, condition, $"'includes {reading.Word.Values[0]}', 'does not include {reading.Word.Values[0]}', 'is empty' or 'is not empty'"));
        return null;
    }

    private ulong? ReadValues(WordReading reading, string text, SourceSpan span)
    {
        var word = reading.Word;
        var mask = 0UL;
        foreach (var name in text.Split(" or ", StringSplitOptions.TrimEntries))
        {
            var place = word.RuleValues.ToList().IndexOf(name);
            if (place < 0)
            {
                bag.Add(Problems.UnknownValue(span, name, word.Id, word.RuleValues));
                return null;
            }
            if (reading.Name is { } side && word.ValueSides?.HasSides(place) == false)
            {
                bag.Add(Problems.ValueWithoutSide(span, word.Id, name, side));
                return null;
            }
            mask |= word.MaskOf(place);
        }
        return mask;
    }
}
