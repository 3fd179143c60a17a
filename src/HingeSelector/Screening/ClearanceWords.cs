using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads the names in a clearance against the closed lists of the vocabulary.</summary>
internal sealed class ClearanceWords(Vocabulary vocabulary, DiagnosticBag bag)
{
    private readonly Word? _history = vocabulary.Find(ClearanceTerms.About);

    /// <summary>The history that the letter is about; where the body has two sides the letter says which.</summary>
    public IReadOnlyList<Typed> Items(IReadOnlyList<Typed> names)
    {
        var typed = _history?.Values ?? [];
        var items = new List<Typed>();
        foreach (var name in names)
        {
            var place = PlaceOf(typed, name.Text);
            if (place < 0)
                bag.Add(_history is null ? Problems.UnknownWord(name.Span, ClearanceTerms.About, vocabulary.Ids) : AnswerText.UnknownItem(_history, name, "for"));
            else if (_history!.ValueSides is { } sides && place < sides.Plain.Count && sides.HasSides(place))
                bag.Add(Problems.ClearanceWithoutSide(name.Span, sides.Plain[place]));
            else
                items.Add(name with { Text = typed[place] });
        }
        return items;
    }

    /// <summary>What the letter covers.</summary>
    public IReadOnlyList<string> Covers(IReadOnlyList<Typed> names)
    {
        var known = vocabulary.Clearance.Covers;
        foreach (var name in names.Where(n => PlaceOf(known, n.Text) < 0))
            bag.Add(Problems.UnknownValue(name.Span, name.Shown, "covers", known));
        return [.. names.Select(n => PlaceOf(known, n.Text)).Where(p => p >= 0).Select(p => known[p])];
    }

    /// <summary>The profession, if its letters count for all of the items.</summary>
    public ClearanceProfession? Profession(Typed typed, IReadOnlyList<Typed> items)
    {
        var terms = vocabulary.Clearance;
        var profession = terms.Professions.FirstOrDefault(p => Same(p.Id, typed.Text));
        if (profession is null)
        {
            bag.Add(Problems.UnknownProfession(typed.Span, typed.Shown, [.. terms.Professions.Select(p => p.Id)], terms.Clinicians));
            return null;
        }
        if (profession.MayClear.Count == 0)
        {
            bag.Add(Problems.NoClinician(typed.Span, profession.Id, terms.Clinicians));
            return null;
        }
        var beyond = items.Where(i => !profession.MayClear.Contains(PlainOf(i.Text))).ToList();
        foreach (var item in beyond)
            bag.Add(Problems.ProfessionMayNot(item.Span, profession.Id, PlainOf(item.Text), [.. terms.Professions.Where(p => p.MayClear.Contains(PlainOf(item.Text))).Select(p => p.Id)]));
        return beyond.Count == 0 ? profession : null;
    }

    /// <summary>The heaviest load that the letter allows, in kg.</summary>
    public double? Cap(Typed typed)
    {
        if (!QuantityText.TryRead(typed.Shown, Dimension.Mass, Unit.Find("kg"), out var cap, out var problem))
            bag.Add(Problems.BadQuantity(typed.Span, "cap", problem!));
        else if (cap is <= 0 or > 500)
            bag.Add(Problems.OutOfRange(typed.Span, "cap", typed.Shown, "more than 0 kg", "500 kg"));
        else
            return cap;
        return null;
    }

    private string PlainOf(string item)
    {
        var place = PlaceOf(_history!.Values, item);
        return _history.RuleValues[_history.ValueSides?.PlainOf(place) ?? place];
    }

    private static int PlaceOf(IReadOnlyList<string> known, string text)
    {
        for (var i = 0; i < known.Count; i++)
        {
            if (string.Equals(known[i], text, StringComparison.OrdinalIgnoreCase))
                return i;
        }
        return -1;
    }

    /// <remarks>People write "sports physician", the list "sports-physician".</remarks>
    private static bool Same(string id, string text) => string.Equals(id, text.Trim().Replace(' ', '-'), StringComparison.OrdinalIgnoreCase);
}
