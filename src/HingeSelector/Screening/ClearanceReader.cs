using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads a clearance from a map or from the cell of a roster.</summary>
/// <remarks>
/// All of it is needed but the cap: a letter without a last day, or one that nobody on the staff has seen, covers nothing.
/// A date after the day of the answer is no fault: such a letter is not yet valid.
/// </remarks>
internal sealed class ClearanceReader(Vocabulary vocabulary, DiagnosticBag bag)
{
    private const string What = "a clearance";

    /// <summary>Reads the map form.</summary>
    public Clearance? Read(YamlNode node)
    {
        var map = MapReader.Open(node, What, bag);
        if (map is null)
            return null;
        var before = bag.ErrorCount;
        var who = Required(map, "who");
        var profession = Required(map, "profession");
        var date = Required(map, "date") is { } dateText ? Dates.Any(dateText, bag) : null;
        var untilText = Required(map, "valid-until");
        var until = untilText is { } lastText ? Dates.Any(lastText, bag) : null;
        var covers = ReadCovers(map);
        var cap = map.Scalar("cap") is { Value.Length: > 0 } capText ? ReadCap(Typed.From(capText)) : null;
        var seenBy = Required(map, "letter-seen-by");
        map.Finish();
        return bag.ErrorCount > before
            ? null
            : Make(profession!.Text, who!.Text, date!.Value, until!.Value, covers, cap, seenBy!.Text, map.Span, untilText!.Span);
    }

    /// <summary>Reads <c>PROFESSION; WHO; DATE; valid until DATE; covers A + B; cap 40 kg; seen by WHO</c>.</summary>
    public Clearance? Read(Typed typed)
    {
        var parts = typed.Split(';');
        var until = Find(parts, "valid until ");
        var covers = Find(parts, "covers ");
        var cap = Find(parts, "cap ");
        var seenBy = Find(parts, "seen by ");
        if (parts.Count != (cap is null ? 6 : 7) || until is null || covers is null || seenBy is null || parts.Any(p => p.IsBlank))
        {
            bag.Add(Problems.BadClearance(typed.Span, typed.Shown));
            return null;
        }
        var before = bag.ErrorCount;
        var date = Dates.Any(parts[2], bag);
        var last = Dates.Any(until, bag);
        var names = ReadCovers(covers.Split('+'));
        var highest = cap is null ? null : ReadCap(cap);
        return bag.ErrorCount > before
            ? null
            : Make(parts[0].Text, parts[1].Text, date!.Value, last!.Value, names, highest, seenBy.Text, typed.Span, until.Span);
    }

    private Clearance? Make(string profession, string who, DateOnly date, DateOnly until, IReadOnlyList<string> covers, double? cap, string seenBy, SourceSpan span, SourceSpan untilSpan)
    {
        if (string.Equals(who, seenBy, StringComparison.OrdinalIgnoreCase))
        {
            bag.Add(Problems.SignedAndSeenByOne(span, who));
            return null;
        }
        if (until > date.AddYears(1))
        {
            bag.Add(Problems.ClearanceTooLong(untilSpan, Dates.Print(until), Dates.Print(date.AddYears(1))));
            return null;
        }
        if (until >= date)
            return new Clearance(profession, who, date, until, covers, cap, seenBy, span);
        bag.Add(Problems.EndsBeforeItBegins(untilSpan, "The clearance", Dates.Print(until), Dates.Print(date)));
        return null;
    }

    private static Typed? Find(IReadOnlyList<Typed> parts, string start)
    {
        foreach (var part in parts.Skip(3))
        {
            if (part.Text.StartsWith(start, StringComparison.OrdinalIgnoreCase))
                return part.Part(start.Length, part.Text.Length - start.Length);
        }
        return null;
    }

    /// <summary>A value that must be there; keys of several words may be written with spaces or hyphens.</summary>
    private static Typed? Required(MapReader map, string key)
    {
        var spaced = key.Replace('-', ' ');
        var scalar = map.Required(map.Entries.Any(e => e.Key.Value == spaced) ? spaced : key);
        return scalar is null ? null : Typed.From(scalar with { Value = scalar.Value.Trim() });
    }

    private IReadOnlyList<string> ReadCovers(MapReader map)
    {
        var node = map.Node("covers");
        if (node is null or YamlScalar { Value.Length: 0 } or YamlList { Items.Count: 0 })
        {
            bag.Add(Problems.MissingKey(node?.Span ?? map.Span, "covers", What));
            return [];
        }
        return ReadCovers(node is YamlScalar one ? Typed.From(one).Split('+') : [.. map.Scalars("covers").Select(Typed.From)]);
    }

    private IReadOnlyList<string> ReadCovers(IReadOnlyList<Typed> names)
    {
        foreach (var name in names.Where(n => !vocabulary.ClearanceCovers.Contains(n.Text, StringComparer.Ordinal)))
            bag.Add(Problems.UnknownValue(name.Span, name.Shown, "covers", vocabulary.ClearanceCovers));
        return [.. names.Select(n => n.Text)];
    }

    private double? ReadCap(Typed typed)
    {
        if (!QuantityText.TryRead(typed.Shown, Dimension.Mass, Unit.Find("kg"), out var cap, out var problem))
            bag.Add(Problems.BadQuantity(typed.Span, "cap", problem!));
        else if (cap is <= 0 or > 500)
            bag.Add(Problems.OutOfRange(typed.Span, "cap", typed.Shown, "more than 0 kg", "500 kg"));
        else
            return cap;
        return null;
    }
}
