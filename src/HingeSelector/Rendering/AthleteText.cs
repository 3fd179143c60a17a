using System.Globalization;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>The whole answer for one athlete as lines: the answer first, reasons behind it.</summary>
public sealed class AthleteText(RuleBook book)
{
    private const int MostFor = 4;
    private const int MostAgainst = 2;
    private const int MostCues = 3;
    private const int MostFacts = 4;
    private const int MostCautions = 3;

    private readonly SetUpText _setUp = new(book);
    private readonly TopBlock _top = new(book);

    /// <summary>The lines of an answer.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="top">How many candidates are told in full.</param>
    public IEnumerable<Line> Of(Recommendation answer, int top)
    {
        yield return Title(answer);
        foreach (var line in answer.Stops.SelectMany(Stop))
            yield return line;
        // Help first: nothing may draw the eye away from an emergency.
        if (answer.Outcome == Outcome.Emergency)
            yield break;
        foreach (var line in Questions(answer))
            yield return line;
        var pressing = Pressing(answer).ToList();
        var block = _top.Of(answer, pressing).ToList();
        foreach (var line in block)
            yield return line;
        // What was said whole at the top is not said again.
        pressing.RemoveAll(text => block.Contains(Line.Text("Beware", text)));
        if (block.Count > 0 && pressing.Count + answer.Remarks.Count > 0)
            yield return Line.Heading("Before the first set");
        // What concerns the athlete and not one pull stands where it is read.
        foreach (var text in pressing)
            yield return Line.Text("Beware", text);
        foreach (var remark in answer.Remarks)
            yield return Line.Text("Note", remark);
        var common = CommonCautions(answer);
        foreach (var ranked in answer.Ranked.Take(top))
        {
            foreach (var line in Candidate(answer, ranked, common))
                yield return line;
        }
        foreach (var line in Behind(answer, top, common))
            yield return line;
        yield return Line.Faint(StampText.Of(answer.Stamp));
    }

    /// <summary>Who, and what kind of answer.</summary>
    public static Line Title(Recommendation answer)
        => Line.Title($"{answer.Athlete.Id}{(answer.Athlete.Name is { } name && name != answer.Athlete.Id ? " " + name : "")}: {OutcomeText.Headline(answer)}");

    /// <summary>What to do about a stop, and the rule behind it.</summary>
    public static IEnumerable<Line> Stop(StopNotice stop)
    {
        yield return Line.Text("Stop", stop.Say);
        yield return Line.Text("See", stop.See);
        yield return Line.Text("Because", $"{TraceText.Facts(stop.Trace, MostFacts)}. {stop.Trace.Rule.Because} {TraceText.Trust(stop.Trace.Rule)}; rule {TraceText.Rule(stop.Trace.Rule)}");
    }

    /// <summary>Place, or that it is tied.</summary>
    public static string Place(RankedCandidate ranked) => (ranked.TiedWithFirst ? "tied " : "") + ranked.Place.ToString(CultureInfo.InvariantCulture);

    /// <summary>A reason with points, criterion, grade and sources.</summary>
    public string Reason(Reason reason)
        => $"{WithSign(reason.Points)} {book.Criteria[reason.Criterion].Label.ToLowerInvariant()}: {reason.Trace.Rule.Because} {TraceText.Trust(reason.Trace.Rule)}";

    /// <summary>A whole number with its sign.</summary>
    public static string WithSign(int points) => points.ToString("+0;-0;0", CultureInfo.InvariantCulture);

    private static IEnumerable<Line> Questions(Recommendation answer)
    {
        if (answer.Unanswered.Count == 0)
            yield break;
        yield return Line.Heading("Must be answered before anyone pulls");
        foreach (var (word, label) in answer.Unanswered)
            yield return Line.Text("Ask", $"{label} ({word})");
    }

    private IEnumerable<Line> Candidate(Recommendation answer, RankedCandidate ranked, List<string> common)
    {
        var candidate = ranked.Candidate;
        yield return Line.Heading($"{Place(ranked)}. {candidate.Variant.Label} - {ranked.Score} points{(ranked.IsStanding ? ", the variant of the block" : "")}");
        foreach (var line in SetUp(ranked, ranked == answer.Ranked[0]))
            yield return line;
        foreach (var reason in ranked.Reasons.Where(r => r.Points > 0).Take(MostFor))
            yield return Line.Text("For", Reason(reason));
        foreach (var reason in ranked.Reasons.Where(r => r.Points < 0).Take(MostAgainst))
            yield return Line.Text("Against", Reason(reason));
        foreach (var (say, _) in ranked.Cues.Take(MostCues))
            yield return Line.Text("Say", say);
        var cautions = ranked.Cautions.Select(c => c.Text).Except(common).ToList();
        foreach (var text in cautions.Take(MostCautions))
            yield return Line.Text("Beware", text);
        // The answer first, the numbers behind it after.
        foreach (var line in Numbers(answer, ranked))
            yield return line;
        if (cautions.Count > MostCautions)
            yield return Line.Faint($"{cautions.Count - MostCautions} more to beware of: --why {candidate.Variant.Id}");
    }

    private IEnumerable<Line> SetUp(RankedCandidate ranked, bool first)
    {
        var candidate = ranked.Candidate;
        if (SetUpText.Height(candidate) is { } height)
            yield return Line.Text("Hands", height);
        // The handles of a frame are where they are.
        if (candidate.Variant.Posture?.Hands == "bar-ahead-of-shins" && _setUp.Grip(candidate) is { } grip)
            yield return Line.Text("Grip", grip);
        // Feet, straps, lowering and dose of the first are at the top already.
        if (first)
            yield break;
        var stance = SetUpText.Stance(candidate);
        yield return Line.Text("Set-up", $"{(stance is null ? "" : stance + "; ")}{_setUp.Hands(candidate.Variant)}; {_setUp.Rest(ranked)}");
        yield return Line.Text("Work", SetUpText.Dose(ranked));
    }

    private IEnumerable<Line> Numbers(Recommendation answer, RankedCandidate ranked)
    {
        var candidate = ranked.Candidate;
        yield return Line.Text("Fit", $"{SetUpText.Fit(candidate)}{(SpareText.Of(candidate.Choice?.Margins) is { } spare ? $"; to spare: {spare}" : "")}");
        if (HeldSeen.In(book, answer, candidate) is { } held)
            yield return Line.Text("Held", held.ToString());
        if (ranked.Candidate.Choice is { Reasons.Count: > 0 } choice)
            yield return Line.Text("Search", string.Join("; ", SetUpText.Why(choice)));
        if (ChangeText.Of(ranked) is { } changed)
            yield return Line.Text("Changed", changed);
    }

    private static IEnumerable<string> Pressing(Recommendation answer)
        => answer.Cautions.Where(c => SafetyTopics.Has(c.Trace.Rule)).Select(c => c.Text).Take(MostCautions);

    // What belongs to every pull is said once.
    private static List<string> CommonCautions(Recommendation answer)
        => answer.Ranked.Count < 2 ? [] : [.. answer.Ranked.Select(r => r.Cautions.Select(c => c.Text)).Aggregate((a, b) => a.Intersect(b, StringComparer.Ordinal))];

    private static IEnumerable<Line> Behind(Recommendation answer, int top, List<string> common)
    {
        var rest = answer.Ranked.Skip(top).ToList();
        if (rest.Count > 0)
            yield return Line.Heading("Further down");
        foreach (var ranked in rest)
            yield return Line.Text(Place(ranked), $"{ranked.Candidate.Variant.Label}, {ranked.Score} points");
        if (answer.Excluded.Count > 0)
            yield return Line.Heading("Not for this athlete now");
        // One reason that takes out many is told once.
        foreach (var alike in answer.Excluded.GroupBy(e => e.Reasons[0].Trace.Rule.Id, StringComparer.Ordinal))
            yield return Line.Text("Out", $"{string.Join(", ", alike.Select(e => e.Variant.Label))}: {alike.First().Reasons[0].Why} (rule {alike.Key})");
        var general = common.Concat(answer.Cautions.Select(c => c.Text).Except(Pressing(answer))).Distinct().ToList();
        if (general.Count > 0)
            yield return Line.Heading("Beware also");
        foreach (var text in general)
            yield return Line.Text("", $"- {text}");
        var open = OpenSummary.Sentences(answer.Open).ToList();
        if (open.Count > 0)
            yield return Line.Heading("What this answer does not know");
        foreach (var sentence in open)
            yield return Line.Text("Open", sentence);
    }
}
