using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;

namespace HingeSelector.Examples.Squads;

/// <summary>Decides for a whole roster and keeps what staff act on.</summary>
/// <param name="book">The rules.</param>
/// <param name="engine">The engine of record for them.</param>
public sealed class SquadDecider(RuleBook book, IRuleEngine engine)
{
    private readonly Selector _selector = new(book, engine);

    /// <summary>Decides for every athlete.</summary>
    /// <param name="input">What the decisions rest on.</param>
    /// <param name="bag">Collects faults of the input files.</param>
    /// <returns>The decisions, or null when a file or a row is faulty: a golden squad has no holes.</returns>
    public SquadRecord? Decide(SquadInput input, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        var roster = RosterReader.Read(Source(input.Roster), book.Vocabulary, input.On, bag);
        var room = input.Room is null ? null : RoomReader.Read(Source(input.Room), bag);
        var standing = input.Standing is null ? null : StandingReader.Read(Source(input.Standing), [.. book.Variants.Select(v => v.Id)], input.On, bag);
        if (bag.ErrorCount != before)
            return null;
        var philosophy = book.Philosophies[input.Philosophy];
        var decisions = roster.Good.Select(a => Of(_selector.Choose(new Question(a, room, standing?.GetValueOrDefault(a.Id), philosophy, input.On))));
        return new SquadRecord(Stamps.Tool, book.Hash, input, [.. decisions]);
    }

    private static SourceText Source(SquadFile file) => new(file.Name, file.Text);

    private AthleteDecision Of(Recommendation answer) => new(
        answer.Athlete.Id,
        Word(answer.Outcome.ToString()),
        [.. answer.Stops.Select(s => $"{Word(s.Level.ToString())} ({s.Trace.Rule.Id}): {s.Say} See: {s.See}")],
        [.. answer.Unanswered.Select(u => u.Word)],
        [.. answer.Ranked.Select(Of)],
        [.. answer.Excluded.Select(e => $"{e.Variant.Id}: {string.Join(", ", e.Reasons.Select(r => r.Trace.Rule.Id))}")],
        [.. answer.Cautions.Select(c => c.Text)]);

    private CandidateDecision Of(RankedCandidate ranked) => new(
        ranked.Candidate.Variant.Id,
        ranked.Place,
        ranked.Score,
        book.Criteria.ToDictionary(c => c.Id, c => ranked.Points[c.Index], StringComparer.Ordinal),
        Band(ranked.Candidate.Choice?.Heights),
        Band(ranked.Candidate.Choice?.Grips),
        [.. ranked.Wishes.Words.OrderBy(w => w.Key, StringComparer.Ordinal).Select(w => $"{w.Key}: {w.Value}")],
        [.. ranked.Cues.Select(c => c.Say)],
        [.. ranked.Cautions.Select(c => c.Text)]);

    private static string? Band(LengthBand? band)
    {
        if (band is null)
            return null;
        var run = band.Fitting is { } fitting ? $"{Cm(fitting.From)} to {Cm(fitting.To)} cm" : "no band";
        return $"{Cm(band.FirstTry)} cm first, {run}";
    }

    private static string Cm(Length length) => Math.Round(length.Metres * 100, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Word(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
