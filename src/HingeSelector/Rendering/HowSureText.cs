using System.Globalization;
using HingeSelector.Explaining;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Tells how sure the first choice is.</summary>
public static class HowSureText
{
    private const int MostOthers = 4;

    /// <summary>The lines.</summary>
    public static IEnumerable<Line> Of(Recommendation answer, HowSure sure)
    {
        foreach (var line in ExplanationHead.Of(answer))
            yield return line;
        if (!ExplanationHead.MayFollow(answer))
            yield break;
        foreach (var line in sure.First is null ? [ExplanationHead.NothingRanked] : Counts(sure))
            yield return line;
        yield return Line.Faint(StampText.Of(answer.Stamp));
    }

    private static IEnumerable<Line> Counts(HowSure sure)
    {
        var times = $"{sure.First!.Label} comes first in {sure.OfHundred} of 100";
        yield return Line.Heading(sure.IsClear ? times : $"There is no clear first: {times}");
        if (sure.StaysByBlock)
            yield return Line.Text("Block", "It is the variant of the block and stays first while it may be pulled and fits; its points are not what is counted here.");
        foreach (var (variant, count) in sure.Counts.Where(c => c.Variant.Index != sure.First.Index && c.Count > 0).Take(MostOthers))
            yield return Line.Text("", $"{variant.Label}: {Hundred(sure, count)}");
        if (sure.NoPull > 0)
            yield return Line.Text("", $"Nothing may be pulled: {Hundred(sure, sure.NoPull)}");
        yield return Line.Text("Counted", $"{sure.Draws.ToString(CultureInfo.InvariantCulture)} draws, always the same ones. In each, every measured number is off by its own error, every number of the model lies anywhere in its range, and segments that were not measured lie anywhere in the scatter of the survey. Answers, ratings and rules are as they are.");
        yield return Line.Text("Not said", "This counts how firm the order is. It says nothing about how likely anybody is to be hurt.");
    }

    private static string Hundred(HowSure sure, int count) => sure.InHundred(count) == 0 ? "in fewer than 1 of 100" : $"in {sure.InHundred(count)} of 100";
}
