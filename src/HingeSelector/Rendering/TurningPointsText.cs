using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Tells at which values the first choice changes.</summary>
public sealed class TurningPointsText(RuleBook book)
{
    private const int Most = 12;

    /// <summary>The lines.</summary>
    public IEnumerable<Line> Of(Recommendation answer, TurningPoints points)
    {
        foreach (var line in ExplanationHead.Of(answer))
            yield return line;
        if (!ExplanationHead.MayFollow(answer))
            yield break;
        foreach (var line in points.First is null ? [ExplanationHead.NothingRanked] : Points(points))
            yield return line;
        if (points.First is not null)
            yield return ExplanationHead.LeftOut(book, points.LeftOut);
        yield return Line.Faint(StampText.Of(answer.Stamp));
    }

    private static IEnumerable<Line> Points(TurningPoints points)
    {
        yield return Line.Heading($"First choice: {points.First!.Label}. One fact moved at a time, all others as they are ({points.Asked} moved)");
        if (points.Numbers.Count + points.Answers.Count == 0)
            yield return Line.Text("", "No single fact changes it anywhere in the range that is accepted.");
        foreach (var point in points.Numbers.Take(Most))
            yield return Line.Text("", Of(point));
        if (points.Numbers.Count > Most)
            yield return Line.Text("", $"and {points.Numbers.Count - Most} farther away (--format json lists all)");
        foreach (var answer in points.Answers)
            yield return Line.Text("", $"{answer.Word.Label} is {answer.Now}; if {answer.Value}: {ExplanationHead.Becomes(answer.Becomes, answer.Outcome)}");
    }

    private static string Of(TurningPoint point)
        => $"{point.Label} is {point.Word.Print(point.Now)}; from {point.Word.Print(point.At)} {(point.IsAbove ? "up" : "down")} ({point.Word.Print(point.Distance)} {(point.IsAbove ? "more" : "less")}{(point.InErrors is { } errors ? $", {ShortfallText.Errors(errors)}" : "")}): {ExplanationHead.Becomes(point.Becomes, point.Outcome)}";
}
