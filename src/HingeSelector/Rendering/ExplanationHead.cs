using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>What stands above every explanation: who, what holds, what must be answered. Nothing is explained over the head of a stop.</summary>
public static class ExplanationHead
{
    /// <summary>The lines.</summary>
    public static IEnumerable<Line> Of(Recommendation answer)
    {
        yield return AthleteText.Title(answer);
        foreach (var line in answer.Stops.SelectMany(AthleteText.Stop))
            yield return line;
        foreach (var (word, label) in answer.Unanswered)
            yield return Line.Text("Ask", $"{label} ({word})");
    }

    /// <summary>Whether anything may follow the head: an emergency stands alone.</summary>
    public static bool MayFollow(Recommendation answer) => answer.Outcome != Outcome.Emergency;

    /// <summary>That nothing may be pulled, so that nothing is looked for.</summary>
    public static Line NothingRanked { get; } = Line.Text("Remark", "Nothing is ranked while this holds, so there is no first choice to change. What holds is answered by the athlete and by those named above.");

    /// <summary>Facts that are not proposed, and why, in one paragraph.</summary>
    public static Line LeftOut(RuleBook book, IReadOnlyList<LeftOut> leftOut)
        => Line.Text("Not moved", string.Join("; ", leftOut.Select(l => $"{What(book, l)}: {l.Why}")) + ".");

    private static string What(RuleBook book, LeftOut leftOut)
    {
        const int most = 4;
        var group = book.Vocabulary.Groups.FirstOrDefault(g => g.NotSuggested == leftOut.Why);
        if (group is not null && leftOut.Words.Count > most)
            return group.Label.ToLowerInvariant();
        var more = leftOut.Words.Count - most;
        return string.Join(", ", leftOut.Words.Take(most).Select(w => w.Id)) + (more > 0 ? $" and {more} more" : "");
    }

    /// <summary>The first choice after a change, or that nothing may be pulled.</summary>
    public static string Becomes(Knowledge.Variant? variant, Outcome outcome) => variant?.Label ?? $"nothing may be pulled ({OutcomeText.Word(outcome)})";
}
