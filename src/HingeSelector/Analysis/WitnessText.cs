using System.Globalization;
using HingeSelector.Knowledge;
using HingeSelector.Rules.Solving;
using HingeSelector.Words;

namespace HingeSelector.Analysis;

/// <summary>Writes a screen as an item for <c>tries:</c>.</summary>
internal static class WitnessText
{
    /// <summary>The item.</summary>
    /// <param name="witness">The screen.</param>
    /// <param name="variants">The catalogue.</param>
    /// <param name="perCandidate">Whether the rule is asked for a variant.</param>
    public static string Of(Witness witness, IReadOnlyList<Variant> variants, bool perCandidate)
    {
        var variant = perCandidate ? $"\n  for: {variants[witness.Variant ?? 0].Id}" : "";
        return $"{Given(witness.Given)}{variant}\n  expect: fires";
    }

    /// <summary>The answers alone.</summary>
    public static string Given(IEnumerable<GivenWord> answers)
    {
        var given = string.Join(", ", answers.GroupBy(g => g.Reading.Word.Sided ? g.Reading.Word.Id : g.Reading.ToString(), StringComparer.Ordinal).Select(g => Entry(g.Key, [.. g])));
        return $"- given: {{{given}}}";
    }

    private static string Entry(string name, IReadOnlyList<GivenWord> answers)
    {
        if (!answers[0].Reading.Word.Sided)
            return $"{Key(name)}: {Value(answers[0])}";
        return $"{name}: {{{string.Join(", ", answers.Select(a => $"{a.Reading.Name}: {Value(a)}"))}}}";
    }

    // A comma would end the key inside braces.
    private static string Key(string name) => name.Contains(',', StringComparison.Ordinal) ? $"'{name}'" : name;

    private static string Value(GivenWord answer)
    {
        var (word, value) = (answer.Reading.Word, answer.Value);
        if (value.State == FactState.NotApplicable)
            return "not applicable";
        if (word.Kind == WordKind.Number)
            return Number(word, value.Low);
        var names = word.Values.Where((_, i) => (value.Bits & (1UL << i)) != 0);
        return word.Kind == WordKind.Set ? $"[{string.Join(", ", names)}]" : names.First();
    }

    private static string Number(Word word, double value)
    {
        var unit = word.Unit;
        var number = Math.Round(value / (unit?.Factor ?? 1), 9).ToString("0.#########", CultureInfo.InvariantCulture);
        return unit is null ? number : $"{number} {unit.Symbol}";
    }
}
