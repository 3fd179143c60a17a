using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads one typed answer to one word, whatever kind the word is.</summary>
public static class AnswerText
{
    /// <summary>The text that says: nobody has measured or asked. The same as writing nothing.</summary>
    public const string NotMeasured = "not measured";

    /// <summary>The text that says: the athlete did not want to.</summary>
    public const string Refused = "refused";

    /// <summary>The text that says: the question does not arise.</summary>
    public const string NotApplicable = "not applicable";

    /// <summary>Reads an answer.</summary>
    /// <param name="word">The word that it answers.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="bag">Collects faults.</param>
    /// <param name="assumed">Unit of a bare number; the word's own unit when null.</param>
    /// <returns>The value; not measured when nothing is said; null when the text is faulty.</returns>
    public static FactValue? Read(Word word, Typed typed, DiagnosticBag bag, Unit? assumed = null)
    {
        if (WithoutValue(typed) is { } reason)
            return reason;
        return word.Kind switch
        {
            WordKind.Number => Number(word, typed, bag, assumed),
            WordKind.Choice => Choice(word, typed, bag),
            WordKind.Set => Set(word, typed.Split('+'), bag),
            WordKind.Date => Date(typed, bag),
            _ => Text(word, typed, bag),
        };
    }

    /// <summary>The answers that carry no value, or null when the text is none of them.</summary>
    public static FactValue? WithoutValue(Typed typed) => typed.Text.Trim().ToLowerInvariant() switch
    {
        "" or NotMeasured => FactValue.Missing,
        Refused => FactValue.Unknown(FactState.Refused),
        NotApplicable => FactValue.NotApplicable,
        _ => null,
    };

    /// <summary>Reads the items of a set; a single <c>none</c> is the empty set.</summary>
    public static FactValue? Set(Word word, IReadOnlyList<Typed> items, DiagnosticBag bag)
    {
        if (items.Count == 0 || (items.Count == 1 && Same(items[0].Text, "none")))
            return FactValue.Of(0);
        var bits = 0UL;
        var good = true;
        foreach (var item in items)
        {
            var place = PlaceOf(word, item.Text);
            if (place < 0)
            {
                bag.Add(item.IsBlank
                    ? Problems.UnknownValue(item.Span, "", word.Id, word.Values) with { Hint = "Remove the '+' that joins nothing." }
                    : UnknownItem(word, item, word.Id));
                good = false;
            }
            else
            {
                bits |= 1UL << place;
            }
        }
        return good ? FactValue.Of(bits) : null;
    }

    /// <summary>An item that a set does not hold; sides are told apart from names, or the list would be three times as long.</summary>
    internal static Diagnostic UnknownItem(Word word, Typed item, string key)
    {
        var problem = Problems.UnknownValue(item.Span, item.Shown, key, word.RuleValues);
        if (word.ValueSides is null)
            return problem;
        var bare = word.RuleValues.FirstOrDefault(v => Sides.Names.Take(2).Any(side => Same($"{v} {side}", item.Text)));
        var near = bare is null ? NearestName.Find(item.Text, word.Values) : null;
        return problem with { Hint = bare is not null ? $"'{bare}' has no left and right; write '{bare}'." : near is not null ? $"Did you mean '{near}'?" : null };
    }

    /// <summary>Why a word is not typed in screens, for a message.</summary>
    internal static string WhyNotTyped(Word word) => word.About switch
    {
        WordAbout.Variant => "is a property of a way of pulling",
        WordAbout.Room => "is counted from the room file",
        _ => "is worked out by the program",
    };

    private static bool IsYesNo(Word word) => word.Values is ["no", "yes"];

    private static FactValue? Number(Word word, Typed typed, DiagnosticBag bag, Unit? assumed)
    {
        if (QuantityText.TryRead(typed.Shown, word.Dimension, assumed ?? word.Unit, out var value, out var problem))
            return FactValue.Number(value);
        bag.Add(Problems.BadQuantity(typed.Span, word.Id, problem!));
        return null;
    }

    private static FactValue? Choice(Word word, Typed typed, DiagnosticBag bag)
    {
        if (IsYesNo(word) && !typed.Quoted && Trap.IsOne(typed.Text))
        {
            bag.Add(Problems.YamlTrap(typed.Span, typed.Shown, "yes or no") with { Hint = YesOrNo(typed.Text) ?? "Leave it blank when nobody has asked." });
            return null;
        }
        var place = PlaceOf(word, typed.Text);
        if (place >= 0)
            return FactValue.Choice(place);
        var problem = Problems.UnknownValue(typed.Span, typed.Shown, word.Id, word.Values);
        bag.Add(IsYesNo(word) && YesOrNo(typed.Text) is { } hint ? problem with { Hint = hint } : problem);
        return null;
    }

    /// <summary>What to write instead of the many spellings of yes and no, spreadsheets' truth values among them.</summary>
    private static string? YesOrNo(string text) => text.Trim().ToLowerInvariant() switch
    {
        "y" or "yes" or "on" or "true" or "1" or "x" => "Write 'yes', in small letters.",
        "n" or "no" or "off" or "false" or "0" => "Write 'no', in small letters.",
        _ => null,
    };

    private static FactValue? Date(Typed typed, DiagnosticBag bag)
    {
        if (Parse.TryDate(typed.Text, out var date))
            return FactValue.Number(date.DayNumber);
        bag.Add(Problems.BadDate(typed.Span, typed.Shown));
        return null;
    }

    /// <remarks>Rules cannot read texts, so the table only knows that there is one; the text itself is in the answer.</remarks>
    private static FactValue? Text(Word word, Typed typed, DiagnosticBag bag)
    {
        if (typed.Quoted || !Trap.IsOne(typed.Text))
            return FactValue.Of(0);
        bag.Add(Problems.YamlTrap(typed.Span, typed.Text, $"a text for '{word.Id}'"));
        return null;
    }

    /// <remarks>Spreadsheets and telephones put capitals at the start of a cell, so capitals do not matter.</remarks>
    private static int PlaceOf(Word word, string text)
    {
        for (var i = 0; i < word.Values.Count; i++)
        {
            if (Same(word.Values[i], text))
                return i;
        }
        return -1;
    }

    private static bool Same(string a, string b) => string.Equals(a, b.Trim(), StringComparison.OrdinalIgnoreCase);
}
