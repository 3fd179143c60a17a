using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>The answer for a roster: a few lines an athlete, then how many got which outcome.</summary>
public sealed class RosterText(RuleBook book)
{
    private const int MostOpen = 3;
    private const int MostQuestions = 3;

    private readonly AthleteText _athlete = new(book);
    private readonly SetUpText _setUp = new(book);

    /// <summary>The lines of one athlete.</summary>
    public IEnumerable<Line> Of(Recommendation answer)
    {
        yield return AthleteText.Title(answer);
        if (answer.Stamp.Decision is { } decision)
            yield return Line.Text("By", PhilosophyText.InForce(answer.Stamp.Philosophy, decision));
        foreach (var stop in answer.Stops)
            yield return Line.Text("Stop", $"{stop.Say} See: {stop.See}");
        if (answer.Outcome == Outcome.Emergency)
            yield break;
        if (answer.Unanswered.Count > 0)
            yield return Line.Text("Ask", Questions(answer));
        if (answer.Ranked.Count == 0)
            yield break;
        var first = answer.Ranked[0];
        yield return Line.Text("First", $"{first.Candidate.Variant.Label}, {first.Score} points{Tied(answer)}{(first.IsStanding ? ", the variant of the block" : "")}: {_setUp.InOneLine(first)}");
        foreach (var reason in first.Reasons.Where(r => r.Points > 0).Take(1))
            yield return Line.Text("For", _athlete.Reason(reason));
        foreach (var reason in first.Reasons.Where(r => r.Points < 0).Take(1))
            yield return Line.Text("Against", _athlete.Reason(reason));
        if (answer.Ranked.Count > 1)
            yield return Line.Text("Then", $"{answer.Ranked[1].Candidate.Variant.Label}, {answer.Ranked[1].Score} points");
        if (OpenSummary.Missing(answer.Open, MostOpen) is { } missing)
            yield return Line.Text("Missing", missing);
    }

    /// <summary>The closing lines.</summary>
    /// <param name="answers">Ids and outcomes of all athletes that were answered.</param>
    /// <param name="notRead">Rows that could not be read.</param>
    /// <param name="stamp">The stamp of an answer; null without one.</param>
    /// <param name="decided">How many athletes go by a philosophy of record, by its id.</param>
    public static IEnumerable<Line> Closing(IReadOnlyList<(string Id, Outcome Outcome)> answers, int notRead, Stamp? stamp, IReadOnlyDictionary<string, int> decided)
    {
        yield return Line.Title(OutcomeText.Counts(answers));
        if (notRead > 0)
            yield return Line.Title($"{notRead} {(notRead == 1 ? "row" : "rows")} could not be read.");
        if (decided.Count > 0)
            yield return Line.Faint($"Philosophy of record: {string.Join(", ", decided.OrderBy(d => d.Key, StringComparer.Ordinal).Select(d => $"{d.Key} for {d.Value}"))}.");
        if (stamp is not null)
            yield return Line.Faint(StampText.OfAll(stamp));
    }

    private static string Tied(Recommendation answer)
    {
        var others = answer.Ranked.Skip(1).Where(r => r.TiedWithFirst).Select(r => r.Candidate.Variant.Label).ToList();
        return others.Count == 0 ? "" : $", tied with {string.Join(", ", others)}";
    }

    private static string Questions(Recommendation answer)
    {
        var more = answer.Unanswered.Count - MostQuestions;
        return string.Join("; ", answer.Unanswered.Take(MostQuestions).Select(q => q.Label)) + (more > 0 ? $"; and {more} more questions" : "");
    }
}
