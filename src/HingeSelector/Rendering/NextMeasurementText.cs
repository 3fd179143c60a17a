using System.Globalization;
using HingeSelector.Explaining;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Tells what to measure next.</summary>
public static class NextMeasurementText
{
    private const int Most = 8;
    private const int MostBecomes = 2;

    /// <summary>The lines.</summary>
    public static IEnumerable<Line> Of(Recommendation answer, NextMeasurement next)
    {
        foreach (var line in ExplanationHead.Of(answer))
            yield return line;
        if (!ExplanationHead.MayFollow(answer))
            yield break;
        foreach (var line in next.First is null ? [ExplanationHead.NothingRanked] : Measures(next))
            yield return line;
        if (next.Refused.Count > 0)
            yield return Line.Text("Refused", $"{string.Join(", ", next.Refused)}: not asked for again.");
        yield return Line.Faint(StampText.Of(answer.Stamp));
    }

    private static IEnumerable<Line> Measures(NextMeasurement next)
    {
        if (next.NothingWould)
        {
            yield return Line.Heading("Nothing you could measure would change this");
            yield return Line.Text("", next.Measures.Count == 0
                ? $"Everything that bears on {next.First!.Label} as the first choice has been measured."
                : $"{Facts(next.Measures.Count)} not measured; no plausible value of any single one gives another first choice than {next.First!.Label}.");
            yield break;
        }
        var known = next.Measures.Where(m => m.Chance > 0).ToList();
        var guesses = next.Measures.Where(m => m.Chance is null && m.MayChange).ToList();
        yield return Line.Heading($"First choice: {next.First!.Label}. Chance that measuring changes it, the most for its minutes first");
        foreach (var measure in known.Take(Most))
            yield return Line.Text(Percent(measure.Chance!.Value), $"{measure.Word.Label}{(measure.IsExpired ? " (has run out)" : "")}, {Minutes(measure)}: then {string.Join(" or ", measure.Becomes.Take(MostBecomes).Select(v => v.Label))}; spread: {measure.Spread}");
        if (known.Count > Most)
            yield return Line.Text("", $"and {known.Count - Most} with a smaller chance for their minutes");
        if (guesses.Count > 0)
            yield return Line.Heading("May change it; no spread is on file, so no chance is told");
        foreach (var measure in guesses.Take(Most))
            yield return Line.Text("", $"{measure.Word.Label}{(measure.IsExpired ? " (has run out)" : "")}, {Minutes(measure)}: {string.Join("; ", measure.Examples)}");
        if (guesses.Count > Most)
            yield return Line.Text("", $"and {guesses.Count - Most} more");
        var idle = next.Measures.Count(m => !m.MayChange);
        if (idle > 0)
            yield return Line.Text("", $"{Facts(idle)} not measured and would not change it.");
    }

    private static string Facts(int count) => count == 1 ? "1 more fact is" : $"{count.ToString(CultureInfo.InvariantCulture)} more facts are";

    private static string Percent(double share) => $"{Math.Round(100 * share).ToString("0", CultureInfo.InvariantCulture)} in 100";

    private static string Minutes(Measure measure) => measure.Minutes is { } minutes ? $"{minutes.ToString("0.#", CultureInfo.InvariantCulture)} min" : "minutes not known";
}
