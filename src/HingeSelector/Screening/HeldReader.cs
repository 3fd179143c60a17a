using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads one of several held heights from a map or from a part of a roster's cell.</summary>
internal sealed class HeldReader(Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
{
    private const string What = "a held height";

    /// <summary>Reads <c>{in: conventional, height: 34 cm, grip: 56 cm, stance: 32 cm, empty bar: 26 cm, weight: 60 kg}</c>.</summary>
    public GivenHeld? Read(YamlNode node)
    {
        var map = MapReader.Open(node, What, bag);
        if (map is null)
            return null;
        var pull = map.Required("in");
        var height = map.Required("height");
        var parts = HeldWords.Parts.Select(p => (p.Word, Text: Part(map, p.Part))).ToList();
        var day = map.Scalar("on") is { } onText ? Dates.Past(Typed.From(onText), What, on, bag) : null;
        map.Finish();
        if (pull is null || height is null)
            return null;
        return Make(Typed.From(pull), [(HeldWords.Height, Typed.From(height)), .. parts.Where(p => p.Text is not null).Select(p => (p.Word, Typed.From(p.Text!)))], new AnswerExtras(day, null, null));
    }

    /// <summary>Reads <c>conventional; 34 cm; grip 56 cm; stance 32 cm; empty bar 26 cm; weight 60 kg</c>.</summary>
    public GivenHeld? Read(Typed typed)
    {
        var parts = typed.Split(';');
        var values = new List<(string Word, Typed Text)>();
        foreach (var part in parts.Skip(2))
        {
            var (start, word) = HeldWords.Parts.FirstOrDefault(p => part.Text.StartsWith(p.Part + " ", StringComparison.OrdinalIgnoreCase));
            if (start is null)
            {
                bag.Add(Problems.BadHeldHeight(part.Span, part.Shown));
                return null;
            }
            values.Add((word, part.Part(start.Length, part.Text.Length - start.Length)));
        }
        if (parts.Count >= 2 && !parts[0].IsBlank && !parts[1].IsBlank)
            return Make(parts[0], [(HeldWords.Height, parts[1]), .. values], AnswerExtras.None);
        bag.Add(Problems.BadHeldHeight(typed.Span, typed.Shown));
        return null;
    }

    private GivenHeld? Make(Typed pull, IReadOnlyList<(string Word, Typed Text)> values, AnswerExtras extras)
    {
        var before = bag.ErrorCount;
        var variant = AnswerText.Read(vocabulary[HeldWords.Variant], pull, bag);
        var answers = new List<GivenAnswer>();
        foreach (var (id, text) in values)
        {
            var word = vocabulary[id];
            if (AnswerText.Read(word, text, bag) is { } value)
                answers.Add(new GivenAnswer(word, 0, value, text, word.Unit, text.Span) { Extras = extras });
        }
        return bag.ErrorCount > before || variant is not { IsKnown: true } known
            ? null
            : new GivenHeld(System.Numerics.BitOperations.TrailingZeroCount(known.Bits), answers, pull.Span);
    }

    // Keys of two words may be written with a space or a hyphen.
    private static YamlScalar? Part(MapReader map, string key)
    {
        var hyphened = key.Replace(' ', '-');
        return map.Scalar(map.Entries.Any(e => e.Key.Value == hyphened) ? hyphened : key);
    }
}
