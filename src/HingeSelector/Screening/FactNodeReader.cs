using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads what stands behind a word in a screen file: a value, two sides, or a value with its own date.</summary>
internal sealed class FactNodeReader(RecordDraft draft, DateOnly on, DiagnosticBag bag)
{
    /// <summary>Reads one answer or the two answers of a word with sides.</summary>
    public void Read(Word word, YamlScalar key, YamlNode node)
    {
        if (node is YamlMap map)
            ReadMap(word, key, map);
        else if (word.Sided)
            ReadBothSides(word, key, node);
        else
            ReadValue(word, 0, key, node, AnswerExtras.None);
    }

    /// <summary>A word with sides may still be refused or not apply as a whole; a single number says nothing about its side.</summary>
    private void ReadBothSides(Word word, YamlScalar key, YamlNode node)
    {
        if (node is not YamlScalar scalar || AnswerText.WithoutValue(Typed.From(scalar)) is not { } value)
        {
            bag.Add(Problems.SidesExpected(node.Span, word.Id));
            return;
        }
        foreach (var side in new[] { Sides.Left, Sides.Right })
            draft.Add(new GivenAnswer(word, side, value, Typed.From(scalar), word.Unit, key.Span));
    }

    private void ReadMap(Word word, YamlScalar key, YamlMap map)
    {
        var reader = MapReader.Open(map, $"'{word.Id}'", bag)!;
        if (!word.Sided && map.Find("left") is null && map.Find("right") is null)
        {
            var extras = ReadExtras(word, reader);
            if (reader.Node("value") is { } value)
                ReadValue(word, 0, key, value, extras);
            else
                bag.Add(Problems.MissingKey(map.Span, "value", $"'{word.Id}'"));
            reader.Finish();
            return;
        }
        if (!word.Sided)
        {
            bag.Add(Problems.NoSidesExpected(key.Span, word.Id));
            return;
        }
        var shared = ReadExtras(word, reader);
        foreach (var side in new[] { Sides.Left, Sides.Right })
        {
            if (reader.Node(Sides.Names[side]) is { } value)
                ReadSide(word, side, key, value, shared);
        }
        if (map.Find("value") is { } single && map.Find("left") is null && map.Find("right") is null)
        {
            reader.Known("value");
            bag.Add(Problems.SidesExpected(single.Span, word.Id));
        }
        reader.Finish();
    }

    private void ReadSide(Word word, int side, YamlScalar key, YamlNode node, AnswerExtras shared)
    {
        if (node is not YamlMap map)
        {
            ReadValue(word, side, key, node, shared);
            return;
        }
        var name = $"'{word.Id}' {Sides.Names[side]}";
        var reader = MapReader.Open(map, name, bag)!;
        var extras = ReadExtras(word, reader).Or(shared);
        if (reader.Node("value") is { } value)
            ReadValue(word, side, key, value, extras);
        else
            bag.Add(Problems.MissingKey(map.Span, "value", name));
        reader.Finish();
    }

    private AnswerExtras ReadExtras(Word word, MapReader reader)
    {
        var day = reader.Scalar("on") is { } onText ? Dates.Past(Typed.From(onText), $"'{word.Id}'", on, bag) : null;
        var untilText = reader.Scalar("until");
        var until = untilText is null ? null : Dates.Any(Typed.From(untilText), bag);
        var by = reader.Scalar("by")?.Value.Trim();
        if (day is { } first && until is { } last && last < first)
            bag.Add(Problems.EndsBeforeItBegins(untilText!.Span, $"'{word.Id}'", Dates.Print(last), Dates.Print(first)));
        return new AnswerExtras(day, until, string.IsNullOrEmpty(by) ? null : by);
    }

    private void ReadValue(Word word, int side, YamlScalar key, YamlNode node, AnswerExtras extras)
    {
        var typed = node is YamlScalar scalar ? Typed.From(scalar) : new Typed("", false, node.Span);
        var value = node switch
        {
            YamlScalar => AnswerText.Read(word, typed, bag),
            YamlList list when word.Kind == WordKind.Set => ReadList(word, list, ref typed),
            _ => WrongShape(word, node),
        };
        if (value is { } read)
            draft.Add(new GivenAnswer(word, side, read, typed, word.Unit, key.Span) { Extras = extras });
    }

    private FactValue? ReadList(Word word, YamlList list, ref Typed typed)
    {
        var items = new List<Typed>();
        foreach (var item in list.Items)
        {
            if (item is not YamlScalar scalar)
                return WrongShape(word, item);
            items.Add(Typed.From(scalar));
        }
        typed = new Typed(items.Count == 0 ? "none" : string.Join(" + ", items.Select(i => i.Text.Trim())), false, list.Span);
        return AnswerText.Set(word, items, bag);
    }

    private FactValue? WrongShape(Word word, YamlNode node)
    {
        bag.Add(Problems.WrongShape(node.Span, $"'{word.Id}'", word.Kind == WordKind.Set ? "a value or a list of values" : "a single value", node.KindName));
        return null;
    }
}
