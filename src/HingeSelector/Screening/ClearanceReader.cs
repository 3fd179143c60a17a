using HingeSelector.Diagnostics;
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
    private const int CellParts = 7;

    private readonly ClearanceWords _words = new(vocabulary, bag);

    /// <summary>Reads the map form.</summary>
    public Clearance? Read(YamlNode node)
    {
        var map = MapReader.Open(node, What, bag);
        if (map is null)
            return null;
        var before = bag.ErrorCount;
        var who = Required(map, "who");
        var profession = Required(map, "profession");
        var date = Required(map, "date");
        var until = Required(map, "valid-until");
        var items = Names(map, "for");
        var covers = Names(map, "covers");
        var cap = map.Scalar("cap") is { Value.Length: > 0 } capText ? Typed.From(capText) : null;
        var seenBy = Required(map, "letter-seen-by");
        map.Finish();
        if (covers.Count == 0)
            bag.Add(Problems.MissingKey(map.Span, "covers", What));
        if (items.Count == 0)
            bag.Add(Problems.ClearanceForNothing(map.Span, "a line 'for: elbow-operation right'"));
        if (who is null || profession is null || date is null || until is null || seenBy is null)
        {
            ReadTheRest(profession, date, until, items, covers, cap);
            return null;
        }
        return Make(new ClearanceParts(profession, who, date, until, items, covers, cap, seenBy, map.Span), before);
    }

    /// <summary>Reads <c>PROFESSION; WHO; DATE; for ITEM + ITEM; valid until DATE; covers A + B; cap 40 kg; seen by WHO</c>.</summary>
    public Clearance? Read(Typed typed)
    {
        var parts = typed.Split(';');
        var until = Find(parts, "valid until ");
        var items = Find(parts, "for ");
        var covers = Find(parts, "covers ");
        var cap = Find(parts, "cap ");
        var seenBy = Find(parts, "seen by ");
        var count = CellParts - (items is null ? 1 : 0) + (cap is null ? 0 : 1);
        if (parts.Count != count || until is null || covers is null || seenBy is null || parts.Any(p => p.IsBlank))
        {
            bag.Add(Problems.BadClearance(typed.Span, typed.Shown));
            return null;
        }
        var before = bag.ErrorCount;
        if (items is null)
            bag.Add(Problems.ClearanceForNothing(typed.Span, "a part 'for elbow-operation right'"));
        return Make(new ClearanceParts(parts[0], parts[1], parts[2], until, items?.Split('+') ?? [], covers.Split('+'), cap, seenBy, typed.Span), before);
    }

    private Clearance? Make(ClearanceParts parts, int before)
    {
        var date = Dates.Any(parts.Date, bag);
        var until = Dates.Any(parts.Until, bag);
        var items = _words.Items(parts.For);
        var covers = _words.Covers(parts.Covers);
        var cap = parts.Cap is { } capText ? _words.Cap(capText) : null;
        var profession = _words.Profession(parts.Profession, items);
        if (bag.ErrorCount > before)
            return null;
        if (string.Equals(parts.Who.Text, parts.SeenBy.Text, StringComparison.OrdinalIgnoreCase))
            bag.Add(Problems.SignedAndSeenByOne(parts.Span, parts.Who.Text));
        else if (until > date!.Value.AddYears(1))
            bag.Add(Problems.ClearanceTooLong(parts.Until.Span, Dates.Print(until!.Value), Dates.Print(date.Value.AddYears(1))));
        else if (until < date)
            bag.Add(Problems.EndsBeforeItBegins(parts.Until.Span, "The clearance", Dates.Print(until!.Value), Dates.Print(date.Value)));
        else
            return new Clearance(profession!.Id, parts.Who.Text, date.Value, until!.Value, [.. items.Select(i => i.Text)], covers, cap, parts.SeenBy.Text, parts.Span);
        return null;
    }

    /// <summary>Where a part is missing the others are still looked at, so that all faults are told at once.</summary>
    private void ReadTheRest(Typed? profession, Typed? date, Typed? until, IReadOnlyList<Typed> items, IReadOnlyList<Typed> covers, Typed? cap)
    {
        foreach (var text in new[] { date, until }.OfType<Typed>())
            Dates.Any(text, bag);
        var read = _words.Items(items);
        _words.Covers(covers);
        if (cap is { } capText)
            _words.Cap(capText);
        if (profession is { } named)
            _words.Profession(named, read);
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

    private static IReadOnlyList<Typed> Names(MapReader map, string key) => map.Node(key) switch
    {
        null or YamlScalar { Value.Length: 0 } => [],
        YamlScalar one => Typed.From(one).Split('+'),
        _ => [.. map.Scalars(key).Select(Typed.From)],
    };
}
