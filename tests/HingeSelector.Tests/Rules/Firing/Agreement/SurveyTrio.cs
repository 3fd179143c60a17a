using System.Globalization;
using HingeSelector.Recommending;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>The three deciders on people of the survey: first the rules, then the whole answer with each of them as the engine of record. For one thread.</summary>
/// <param name="trio">The three.</param>
/// <param name="on">Day of the answers.</param>
internal sealed class SurveyTrio(Trio trio, DateOnly on)
{
    private readonly IReadOnlyList<Room> _rooms = TrainingRooms.All();
    private readonly Selector[] _selectors = [.. trio.Engines.Select(e => new Selector(trio.Book, e))];

    /// <summary>How many candidates were compared in rankings.</summary>
    public long Candidates { get; private set; }

    /// <summary>Asks all three about one person.</summary>
    /// <param name="athlete">The person.</param>
    /// <param name="place">Place in the survey; rooms are given out in turn.</param>
    /// <returns>The first difference, or null when all agree.</returns>
    public string? Difference(AthleteRecord athlete, int place)
    {
        var question = new Question(athlete, _rooms[place % _rooms.Count], null, trio.Book.Philosophies["balanced"], on);
        var selector = _selectors[0];
        var facts = selector.GatherFacts(athlete, question);
        var (cases, candidates, table) = selector.SolveStandardPostures(facts, question);
        if (trio.Difference(cases, e => Selector.AddChosenPostures(cases, selector.SearchSetUps(facts, question, candidates, e), table)) is { } ofRules)
            return ofRules;
        var answers = _selectors.Select(s => Lines(s.Choose(question))).ToList();
        Candidates += answers[0].Count(l => l.StartsWith('#'));
        foreach (var other in answers.Skip(1))
        {
            if (!other.SequenceEqual(answers[0]))
                return $"{answers[0].Except(other).FirstOrDefault()} against {other.Except(answers[0]).FirstOrDefault()}";
        }
        return null;
    }

    // Everything that an answer says of who is where and why, as text.
    private static List<string> Lines(Recommendation answer) =>
    [
        answer.Outcome.ToString(),
        .. answer.Stops.Select(s => $"stop {s.Level} {s.Trace.Rule.Id}"),
        .. answer.Findings,
        .. answer.Ranked.Select(Line),
        .. answer.Excluded.Select(e => $"out {e.Variant.Id}: {string.Join(", ", e.Reasons.Select(r => r.Trace.Rule.Id))}"),
        .. answer.Fired.Select(f => f.ToString()),
    ];

    private static string Line(RankedCandidate ranked)
    {
        var setUp = ranked.Candidate.Choice?.FirstTry;
        return string.Create(CultureInfo.InvariantCulture, $"#{ranked.Place} {ranked.Candidate.Variant.Id} tied {ranked.TiedWithFirst} score {ranked.Score} points {string.Join(' ', ranked.Points)} height {setUp?.HandHeight.Metres:R} grip {setUp?.Grip.Metres:R} stance {setUp?.Stance.Metres:R} {string.Join(' ', ranked.Wishes.Words.OrderBy(w => w.Key, StringComparer.Ordinal))} {string.Join(' ', ranked.Cues.Select(c => c.Trace.Rule.Id))} {string.Join(' ', ranked.Cautions.Select(c => c.Trace?.Rule.Id))}");
    }
}
