using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>The answer in at most eight rows, for a coach with a bar in front of them; the reasons stand below it.</summary>
internal sealed class TopBlock(RuleBook book)
{
    /// <summary>Rows that a text of more than one sentence may take.</summary>
    private const int MostRows = 2;

    private readonly SetUpText _setUp = new(book);

    /// <summary>The lines for the first candidate; none without one.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="pressing">Cautions about the athlete that come before those about the pull.</param>
    public IEnumerable<Line> Of(Recommendation answer, IReadOnlyList<string> pressing)
    {
        if (answer.Ranked.Count == 0)
            yield break;
        var first = answer.Ranked[0];
        var candidate = first.Candidate;
        yield return Line.Text("Pull", $"{candidate.Variant.Label}{Standing(answer, first)}");
        if (SetUpText.FirstHeight(candidate) is { } height)
            yield return Line.Text("Height", height);
        yield return Line.Text("Hands", _setUp.HandsInShort(candidate));
        var stance = SetUpText.Stance(candidate);
        yield return Line.Text("Feet", $"{(stance is null ? "" : stance + "; ")}{SetUpText.Footwear(first)}");
        yield return Line.Text("Work", $"{_setUp.StrapsInWords(first)}; {SetUpText.LoweringInWords(first)}; {SetUpText.Dose(first)}");
        if (first.Cues.Count > 0)
            yield return Line.Text("Say", InRows(first.Cues[0].Say, 1));
        if (pressing.Concat(first.Cautions.Select(c => c.Text)).FirstOrDefault() is { } caution)
            yield return Line.Text("Beware", InRows(caution, MostRows));
    }

    private static string Standing(Recommendation answer, RankedCandidate first)
    {
        if (first.IsStanding)
            return ", the variant of the block";
        var tied = answer.Ranked.Count(r => r.TiedWithFirst) - 1;
        return tied > 0 ? $" ({tied} more as good: see below)" : "";
    }

    /// <summary>As many whole sentences as fit; never less than the first, since half a warning is none.</summary>
    private static string InRows(string text, int rows)
    {
        var kept = text;
        while (PlainText.Rows(Line.Text("Beware", kept)).Count > rows && kept.LastIndexOf(". ", kept.Length - 2, StringComparison.Ordinal) is > 0 and var end)
            kept = kept[..(end + 1)];
        return kept;
    }
}
