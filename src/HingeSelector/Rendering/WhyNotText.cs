using System.Globalization;
using HingeSelector.Explaining;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Tells why options are not the first choice.</summary>
public static class WhyNotText
{
    /// <summary>Options whose rules are told with their reasons; of many only the names are told.</summary>
    private const int MostWithReasons = 3;

    /// <summary>The lines.</summary>
    /// <param name="answer">The answer that is explained.</param>
    /// <param name="options">The options to tell.</param>
    public static IEnumerable<Line> Of(Recommendation answer, IReadOnlyList<WhyNotOption> options)
    {
        foreach (var line in ExplanationHead.Of(answer))
            yield return line;
        if (!ExplanationHead.MayFollow(answer))
            yield break;
        foreach (var line in answer.Ranked.Count == 0 && answer.Outcome is not (Outcome.Ranked or Outcome.LimitedToday) ? [ExplanationHead.NothingRanked] : options.SelectMany(o => Option(o, options.Count <= MostWithReasons)))
            yield return line;
        yield return Line.Faint(StampText.Of(answer.Stamp));
    }

    private static IEnumerable<Line> Option(WhyNotOption option, bool reasons)
    {
        yield return Line.Heading($"{option.Variant.Label}: {Place(option)}");
        foreach (var cause in option.Causes)
            yield return Line.Text(LabelOf(cause.Kind), Cause(cause, reasons));
        if (option.More > 0)
            yield return Line.Text("", $"and {option.More} more");
    }

    private static string Place(WhyNotOption option) => option.Place switch
    {
        OptionPlace.First => "the first choice",
        OptionPlace.Tied => $"tied with the first, {Points(option.Gap ?? 0)} behind, which is within one step or the errors",
        OptionPlace.Out => "out",
        OptionPlace.NotRanked => "not ranked",
        _ => option.Gap < 0 ? $"{Points(-option.Gap.Value)} more than the first" : $"{Points(option.Gap ?? 0)} behind the first",
    };

    private static string Points(int points) => points.ToString(CultureInfo.InvariantCulture) + (points == 1 ? " point" : " points");

    private static string LabelOf(CauseKind kind) => kind switch
    {
        CauseKind.Stop => "Stop",
        CauseKind.NotAnswered => "Ask",
        CauseKind.Excluded => "Out",
        CauseKind.Missed => "Misses",
        CauseKind.NotMeasured => "Unknown",
        CauseKind.Beaten => "Beaten",
        CauseKind.Block => "Block",
        _ => "Order",
    };

    private static string Cause(Cause cause, bool reasons)
    {
        // What stands on top of the page is not told once more for every option.
        var parts = new List<string> { cause.Kind == CauseKind.Stop ? "the stop above" : cause.Say.TrimEnd('.') };
        if (cause.Shortfall is { } shortfall)
            parts.Add(ShortfallText.Of(shortfall));
        if (cause.Missing.Count > 0 && cause.Kind == CauseKind.NotMeasured)
            parts.Add("measure " + string.Join(", ", cause.Missing));
        if (cause.Rule is { } rule)
            parts.Add(reasons ? $"rule {TraceText.Rule(rule)} {TraceText.Trust(rule)}: {rule.Because}" : $"rule {rule.Id}");
        return string.Join("; ", parts);
    }
}
