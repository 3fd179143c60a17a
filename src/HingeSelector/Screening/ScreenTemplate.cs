using System.Text;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Blank forms made from the vocabulary, so that a new word is on them without any further work.</summary>
public static class ScreenTemplate
{
    /// <summary>Column at which the comments start, where the text before them is short enough.</summary>
    private const int CommentColumn = 44;

    /// <summary>A blank screen; left as it is, it reads as a record without any answer.</summary>
    public static string AsYaml(Vocabulary vocabulary)
    {
        var text = new StringBuilder();
        text.Append("# One athlete. Leave blank what was not measured or not asked.\n");
        text.Append("# Instead of a value: refused, not applicable. With a date of its own: {value: 92 kg, on: 2026-11-20, by: NAME}.\n");
        Line(text, "id:", "code on the roster; left blank, the name of this file");
        Section(text, "athlete", "who", WordAbout.Athlete, vocabulary);
        text.Append('\n');
        Line(text, "clearances:", $"a list of {{who: NAME, profession: {string.Join(" | ", vocabulary.Clearance.Clinicians)}, date: 2026-11-24, valid-until: 2027-01-31, for: [words of the history, with the side], covers: [{string.Join(", ", vocabulary.Clearance.Covers)}], cap: 40 kg, letter-seen-by: NAME}}");
        Section(text, "screen", "measures; they need the date", WordAbout.Screen, vocabulary);
        Section(text, "day", "today's answers", WordAbout.Day, vocabulary);
        return text.ToString();
    }

    /// <summary>The header row of a blank roster, every column in it; columns that are not used may be removed.</summary>
    public static string AsCsvHeader(Vocabulary vocabulary)
        => string.Join(',', RosterHeader.Columns(vocabulary).Select(c => c.Unit is null ? c.Name : $"{c.Name} ({c.Unit.Symbol})")) + "\n";

    private static void Section(StringBuilder text, string name, string what, WordAbout about, Vocabulary vocabulary)
    {
        text.Append('\n');
        Line(text, name + ":", what);
        if (about != WordAbout.Athlete)
        {
            Line(text, "  date:", "year-month-day");
            Line(text, about == WordAbout.Screen ? "  measured-by:" : "  asked-by:", "name");
        }
        foreach (var group in vocabulary.Groups.Where(g => g.Blanket is not null && vocabulary.InGroup(g.Id)[0].About == about))
            Line(text, $"  {group.Id}:", $"one line for all of them: {group.Blanket}, asked by NAME on 2026-11-24; an answer of its own below goes before it");
        if (about == WordAbout.Screen)
            Line(text, "  held-heights:", "where several pulls were watched, a list of {in: PULL, height: 34 cm, grip: 56 cm, stance: 32 cm, empty bar: 26 cm, weight: 60 kg}");
        foreach (var word in vocabulary.Words.Where(w => w.About == about))
            Line(text, word.Sided ? $"  {word.Id}: {{left: , right: }}" : $"  {word.Id}:", Comment(word));
    }

    private static void Line(StringBuilder text, string start, string comment)
        => text.Append(start.PadRight(Math.Max(CommentColumn, start.Length + 1))).Append("# ").Append(comment).Append('\n');

    private static string Comment(Word word)
    {
        var parts = new List<string> { word.Label };
        if (word.Kind == WordKind.Number)
            parts.Add(Numbers(word));
        else if (word.Values.Count > 0)
            parts.Add(string.Join(word.Kind == WordKind.Set ? " + " : " | ", word.RuleValues) + (word.Kind == WordKind.Set ? ", or none" : "") + Sided(word));
        return string.Join(": ", parts.Where(p => p.Length > 0));
    }

    private static string Sided(Word word)
        => word.ValueSides is { } sides ? $"; left or right behind these: {string.Join(", ", sides.Plain.Where((_, i) => sides.HasSides(i)))}" : "";

    private static string Numbers(Word word)
    {
        var text = word.Unit is null ? "number" : $"in {word.Unit.Symbol}";
        if (word.Range is { } range)
            text += $", {Bare(range.Low, word.Unit)} to {Bare(range.High, word.Unit)}";
        return word.Usual is { } usual ? $"{text}, usually {Bare(usual.Low, word.Unit)} to {Bare(usual.High, word.Unit)}" : text;
    }

    private static string Bare(double value, Unit? unit) => QuantityText.Print(unit is null ? value : value / unit.Factor, null);
}
