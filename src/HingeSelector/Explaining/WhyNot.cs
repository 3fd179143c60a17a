using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>For every option that is not first: what takes it out, what it misses, or which rule beats it.</summary>
public sealed class WhyNot
{
    /// <summary>Causes told of one option.</summary>
    public const int MostCauses = 3;

    /// <summary>Farther away than this a condition is no near miss; errors of measuring and model together.</summary>
    private const double NearMiss = 3;

    private readonly RuleBook _book;
    private readonly Question _question;
    private readonly Recommendation _answer;
    private readonly DecidedCase _decided;
    private readonly Shortfalls _shortfalls;
    private readonly Tracer _tracer;

    private WhyNot(RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        (_book, _question, _answer) = (book, question, answer);
        _decided = DecidedCase.Of(book, engine, question);
        _shortfalls = new Shortfalls(book, _decided);
        _tracer = new Tracer(book, _decided.Cases, _decided.Explained.Findings);
    }

    /// <summary>Every option of the catalogue.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="engine">The engine of record.</param>
    /// <param name="question">The athlete, the room, the day.</param>
    /// <param name="answer">The answer that is explained.</param>
    public static IReadOnlyList<WhyNotOption> Of(RuleBook book, IRuleEngine engine, Question question, Recommendation answer)
    {
        var finder = new WhyNot(book, engine, question, answer);
        return [.. book.Variants.Select(finder.Option)];
    }

    private RankedCandidate? First => _answer.Ranked.Count > 0 ? _answer.Ranked[0] : null;

    private WhyNotOption Option(Variant variant)
    {
        if (_answer.Outcome is not (Outcome.Ranked or Outcome.LimitedToday))
            return Cut(variant, OptionPlace.NotRanked, null, NotRanked());
        if (_answer.Excluded.FirstOrDefault(e => e.Variant.Index == variant.Index) is { } exclusion)
            return Cut(variant, OptionPlace.Out, null, Out(exclusion));
        var ranked = _answer.Ranked.First(r => r.Candidate.Variant.Index == variant.Index);
        if (ranked == First)
            return new WhyNotOption(variant, OptionPlace.First, 0, [], 0);
        return Cut(variant, ranked.TiedWithFirst ? OptionPlace.Tied : OptionPlace.Behind, First!.Score - ranked.Score, Behind(ranked));
    }

    private static WhyNotOption Cut(Variant variant, OptionPlace place, int? gap, List<Cause> causes)
        => new(variant, place, gap, [.. causes.Take(MostCauses)], Math.Max(0, causes.Count - MostCauses));

    private List<Cause> NotRanked()
        => [.. _answer.Stops.Select(s => new Cause(CauseKind.Stop, s.Say, s.Trace.Rule)), .. _answer.Unanswered.Select(u => new Cause(CauseKind.NotAnswered, $"{u.Label} is not answered.", null) { Missing = [u.Word] })];

    // A stop is never told behind a near miss.
    private List<Cause> Out(Exclusion exclusion)
        => [.. exclusion.Reasons.DistinctBy(r => r.Trace.Rule.Index).Select(r => Out(exclusion.Variant, r.Why, r.Trace.Rule))
            .OrderBy(c => c.Kind).ThenBy(c => c.Shortfall?.Nearness ?? double.PositiveInfinity)];

    private Cause Out(Variant variant, string why, Rule rule)
        => rule.Conclusions.Any(c => c is StopConclusion)
            ? new Cause(CauseKind.Stop, why, rule)
            : new Cause(CauseKind.Excluded, why, rule) { Shortfall = _shortfalls.ToEnd(rule, rule.PerCandidate ? variant.Index : Firing.OfAthlete) };

    private List<Cause> Behind(RankedCandidate ranked)
    {
        var gap = First!.Score - ranked.Score;
        if (First.IsStanding && gap <= 0)
            return [new Cause(CauseKind.Block, $"{First.Candidate.Variant.Label} is the variant of the block and stays first.", null)];
        var beaten = Beaten(ranked);
        if (gap == 0 && beaten.Count == 0)
            return [SamePoints];
        var near = new[] { Missed(ranked), NotMeasured(ranked) }.OfType<Cause>().ToList();
        // However near a miss is, the rule that beats the option is told as well.
        return [.. near, .. beaten, .. gap == 0 ? [SamePoints] : Array.Empty<Cause>()];
    }

    private static Cause SamePoints { get; } = new(CauseKind.Order, "It has the same points; among equals the pulls already taught go first, then the order of the catalogue.", null);

    // Criteria in which the first has more, the heaviest first; each with the rule that makes most of the difference.
    private List<Cause> Beaten(RankedCandidate ranked)
    {
        var causes = new List<Cause>();
        foreach (var criterion in _book.Criteria)
        {
            var weight = _question.Philosophy.Weights[criterion.Index];
            var behind = weight * (First!.Points[criterion.Index] - ranked.Points[criterion.Index]);
            if (behind <= 0)
                continue;
            var reason = First.Reasons.Where(r => r.Criterion == criterion.Index && r.Points > 0).Select(r => (Reason: r, Mine: false))
                .Concat(ranked.Reasons.Where(r => r.Criterion == criterion.Index && r.Points < 0).Select(r => (Reason: r, Mine: true)))
                // What both get makes no difference.
                .OrderBy(r => Shared(ranked, r.Reason)).ThenByDescending(r => Math.Abs(r.Reason.Points)).FirstOrDefault();
            var by = reason.Reason is null ? "" : reason.Mine ? ", most by a rule against it" : $", most by a rule for {First.Candidate.Variant.Label}";
            causes.Add(new Cause(CauseKind.Beaten, $"{Points(behind)} behind in {criterion.Label.ToLowerInvariant()}{by}", reason.Reason?.Trace.Rule) { Points = behind, Criterion = criterion });
        }
        return [.. causes.OrderByDescending(c => c.Points)];
    }

    private bool Shared(RankedCandidate ranked, Reason reason)
        => First!.Reasons.Any(r => r.Trace.Rule.Index == reason.Trace.Rule.Index) && ranked.Reasons.Any(r => r.Trace.Rule.Index == reason.Trace.Rule.Index);

    // The rule with points for this option that misses by the least.
    private Cause? Missed(RankedCandidate ranked)
    {
        var variant = ranked.Candidate.Variant.Index;
        var nearest = PointsFor(ranked)
            .Select(p => (p.Rule, p.Line, Shortfall: _shortfalls.ToHold(p.Rule, variant)))
            .Where(p => p.Shortfall?.InErrors <= NearMiss)
            .Select(p => (p.Rule, p.Line, p.Shortfall, Gain: Gain(ranked, p.Line, p.Shortfall!.Word)))
            .Where(p => p.Gain > 0).OrderBy(p => p.Shortfall!.InErrors).ThenByDescending(p => p.Gain).FirstOrDefault();
        return nearest.Shortfall is null ? null : new Cause(CauseKind.Missed, $"{Points(nearest.Gain)} for {_book.Criteria[nearest.Line.Criterion].Label.ToLowerInvariant()} missed", nearest.Rule)
        {
            Shortfall = nearest.Shortfall,
            Points = nearest.Gain,
            Criterion = _book.Criteria[nearest.Line.Criterion],
        };
    }

    private Cause? NotMeasured(RankedCandidate ranked)
    {
        var open = _decided.Explained.Open.ToHashSet();
        var waiting = PointsFor(ranked)
            .Select(p => (p.Rule, p.Line, p.Gain, Firing: new Firing(p.Rule.Index, p.Rule.PerCandidate ? ranked.Candidate.Variant.Index : Firing.OfAthlete)))
            .Where(p => open.Contains(p.Firing)).Select(p => (p.Rule, p.Line, p.Gain, Missing: MayBeAsked(_tracer.Missing(p.Firing))))
            .Where(p => p.Missing.Count > 0).OrderByDescending(p => p.Gain).ThenBy(p => p.Rule.Index).FirstOrDefault();
        return waiting.Rule is null ? null : new Cause(CauseKind.NotMeasured, $"up to {Points(waiting.Gain)} for {_book.Criteria[waiting.Line.Criterion].Label.ToLowerInvariant()} wait for what was not measured", waiting.Rule)
        {
            Missing = waiting.Missing,
            Points = waiting.Gain,
            Criterion = _book.Criteria[waiting.Line.Criterion],
        };
    }

    private List<string> MayBeAsked(IReadOnlyList<string> missing)
        => [.. missing.Where(id => _book.Vocabulary.Find(id) is { IsMeasured: true } word && Changeable.WhyNot(_book.Vocabulary, word) is null)];

    // Rules about candidates only: what every option gets brings none of them forward.
    private IEnumerable<(Rule Rule, PointsConclusion Line, int Gain)> PointsFor(RankedCandidate ranked)
    {
        foreach (var rule in _book.Rules.Where(r => r.PerCandidate && (r.Variants & (1UL << ranked.Candidate.Variant.Index)) != 0))
        {
            foreach (var line in rule.Conclusions.OfType<PointsConclusion>().Where(l => l.Amount > 0))
            {
                var gain = Gain(ranked, line, null);
                if (gain > 0)
                    yield return (rule, line, gain);
            }
        }
    }

    // No fact pays twice in a criterion: what pays for the same word today would no longer hold.
    private int Gain(RankedCandidate ranked, PointsConclusion line, Word? moved)
    {
        const int most = 3;
        var paying = ranked.Reasons.Where(r => r.Criterion == line.Criterion).ToList();
        var now = paying.Sum(r => r.Points);
        var ends = moved is null ? 0 : paying.Where(r => r.Trace.Rule.OpenConditions.Any(c => c.Reads.Any(read => read.Word == moved))).Sum(r => r.Points);
        return _question.Philosophy.Weights[line.Criterion] * (Math.Clamp(now - ends + line.Amount, -most, most) - Math.Clamp(now, -most, most));
    }

    private static string Points(int points) => points == 1 ? "1 point" : $"{points} points";
}
