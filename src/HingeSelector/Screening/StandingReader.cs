using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Screening;

/// <summary>Reads what athletes are pulling in the present block.</summary>
public sealed class StandingReader
{
    private static readonly (double Low, double High) _startHeight = (0.05, 1);
    private static readonly (double Low, double High) _gripWidth = (0.1, 1.5);

    private readonly IReadOnlyList<string> _variantIds;
    private readonly DateOnly _on;
    private readonly DiagnosticBag _bag;

    private StandingReader(IReadOnlyList<string> variantIds, DateOnly on, DiagnosticBag bag)
    {
        _variantIds = variantIds;
        _on = on;
        _bag = bag;
    }

    /// <summary>Reads one file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="variantIds">Ids of the variants in catalogue order.</param>
    /// <param name="on">Day of the answer.</param>
    /// <param name="bag">Collects faults.</param>
    /// <returns>The choices by id of the athlete, or null when there were faults.</returns>
    public static IReadOnlyDictionary<string, StandingChoice>? Read(SourceText source, IReadOnlyList<string> variantIds, DateOnly on, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        var map = MapReader.Open(YamlReader.Read(ByteOrderMark.Without(source), bag), "a file of standing choices", bag);
        if (map is null)
            return null;
        var choices = new StandingReader(variantIds, on, bag).Read(map);
        return bag.ErrorCount == before ? choices : null;
    }

    private Dictionary<string, StandingChoice> Read(MapReader map)
    {
        var choices = new Dictionary<string, StandingChoice>(StringComparer.Ordinal);
        foreach (var choice in map.List("standing").Select(ReadChoice).OfType<StandingChoice>())
        {
            if (!choices.TryAdd(choice.Athlete, choice))
                _bag.Add(Problems.DuplicateId(choice.Span, "standing choice of", choice.Athlete, choices[choice.Athlete].Span) with { Hint = "Give each athlete one standing choice." });
        }
        map.Known(PhilosophyDecisionsReader.Key);
        map.Finish();
        return choices;
    }

    private StandingChoice? ReadChoice(YamlNode node)
    {
        var map = MapReader.Open(node, "a standing choice", _bag);
        if (map is null)
            return null;
        var id = map.Required("id");
        var variant = map.Required("variant");
        var height = Length(map, "start-height", _startHeight);
        var grip = Length(map, "grip-width", _gripWidth);
        var since = map.Required("since") is { } sinceText ? Dates.Past(Typed.From(sinceText), "The first day of the block", _on, _bag) : null;
        var endsText = map.Scalar("block-ends");
        var ends = endsText is null ? null : Dates.Any(Typed.From(endsText), _bag);
        map.Finish();
        if (since is { } first && ends is { } last && last < first)
            _bag.Add(Problems.EndsBeforeItBegins(endsText!.Span, "The block", Dates.Print(last), Dates.Print(first)));
        var place = variant is null ? -1 : _variantIds.ToList().IndexOf(variant.Value);
        if (variant is not null && place < 0)
            _bag.Add(Problems.UnknownValue(variant.Span, variant.Value, "variant", _variantIds));
        return id is null || place < 0 || since is null ? null : new StandingChoice(id.Value.Trim(), place, height, grip, since.Value, ends, id.Span);
    }

    private double? Length(MapReader map, string key, (double Low, double High) range)
    {
        var text = map.Scalar(key);
        if (text is not { Value.Length: > 0 } || Parse.Quantity(text, key, Dimension.Length, _bag) is not { } value)
            return null;
        var unit = Unit.PreferredFor(Dimension.Length);
        if (value < range.Low - 1e-9 || value > range.High + 1e-9)
            _bag.Add(Problems.OutOfRange(text.Span, key, QuantityText.Print(value, unit), QuantityText.Print(range.Low, unit), QuantityText.Print(range.High, unit)) with { Hint = "Check the number and its unit." });
        return value;
    }
}
