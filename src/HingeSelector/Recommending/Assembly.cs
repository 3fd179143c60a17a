using HingeSelector.Candidates;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Recommending;

/// <summary>Turns the rules that hold into the answer: stops first, then holds, exclusions, ranking, reasons.</summary>
internal sealed class Assembly
{
    private readonly RuleBook _book;
    private readonly Question _question;
    private readonly FactValue[] _facts;
    private readonly CaseFacts _cases;
    private readonly CandidateBuilder _builder;
    private readonly CandidateTable _table;
    private readonly IReadOnlyList<ChosenSetUp> _chosen;
    private readonly Evaluation _evaluation;
    private readonly LoopEvaluator _loop;
    private readonly Selector _selector;
    private readonly Tracer _tracer;
    private readonly List<Firing> _fired;

    public Assembly(RuleBook book, Question question, FactValue[] facts, CaseFacts cases, CandidateBuilder builder, CandidateTable table, IReadOnlyList<ChosenSetUp> chosen, Evaluation evaluation, LoopEvaluator loop, Selector selector)
    {
        _book = book;
        _question = question;
        _facts = facts;
        _cases = cases;
        _builder = builder;
        _table = table;
        _chosen = chosen;
        _evaluation = evaluation;
        _loop = loop;
        _selector = selector;
        // The loop evaluator's findings are three-valued throughout; the network only proves what rules need.
        Explained = loop.First(cases);
        loop.Second(cases, Explained);
        _tracer = new Tracer(book, cases, Explained.Findings);
        _fired = [.. evaluation.Fired];
        _fired.Sort();
    }

    private Evaluation Explained { get; }

    public Recommendation Recommend()
    {
        var stops = Stops();
        var unanswered = Holds.Unanswered(_book.Vocabulary, _facts);
        var outcome = OutcomeOf(stops, unanswered);
        if (outcome == Outcome.Emergency)
            stops = [.. stops.Where(s => s.Level == StopLevel.Emergency)];
        var mayPull = outcome is Outcome.Ranked or Outcome.LimitedToday;
        var excluded = mayPull ? Exclusions(stops) : [];
        var ranking = mayPull ? new Ranking(_book, _question, _fired, _chosen, _tracer, new Alternatives(_book, _question.Philosophy, _builder, _table, _cases, Explained, _loop), sign => _selector.ScoresWithErrors(_question, _cases, _chosen, _table, sign), _table.WithLoads, IsNew, [.. excluded.Select(e => e.Variant.Index)]) : null;
        var silent = outcome == Outcome.Emergency;
        return new Recommendation(() => silent ? [] : [.. Explained.Open.Order().Select(Opened)])
        {
            Athlete = _question.Athlete,
            Outcome = outcome,
            Stops = stops,
            Unanswered = silent ? [] : unanswered,
            Ranked = ranking?.Ranked ?? [],
            Excluded = excluded,
            Findings = silent ? [] : [.. _book.Findings.Where(f => Explained.Findings[f.Index] == Truth.True).Select(f => f.Id)],
            Cautions = silent ? [] : Cautions(mayPull),
            Fired = _fired,
            Remarks = silent ? [] : [.. Remarks(), .. ranking?.Remarks ?? []],
            Stamp = Stamps.Of(_book, _question),
        };
    }

    private bool IsNew(int variant) => _cases.Candidates[variant][_book.Vocabulary["new-to-athlete"].Slot] is { IsKnown: true, Bits: 2 };

    private static Outcome OutcomeOf(IReadOnlyList<StopNotice> stops, IReadOnlyList<UnansweredQuestion> unanswered)
    {
        StopLevel? highest = stops.Count > 0 ? stops[0].Level : null;
        return highest switch
        {
            StopLevel.Emergency => Outcome.Emergency,
            StopLevel.Refer => Outcome.Refer,
            _ when unanswered.Count > 0 => Outcome.Held,
            StopLevel.Today => Outcome.LimitedToday,
            _ => Outcome.Ranked,
        };
    }

    private IReadOnlyList<StopNotice> Stops()
        => [.. Said.Of<StopConclusion>(_book, _fired).Select(s => new StopNotice(s.Conclusion.Level, s.Conclusion.Answers, s.Conclusion.See, s.Conclusion.Say, _tracer.Trace(s.Firing))).OrderByDescending(s => s.Level)];

    private List<Exclusion> Exclusions(IReadOnlyList<StopNotice> stops)
    {
        var reasons = _book.Variants.Select(_ => new List<ExclusionReason>()).ToList();
        foreach (var (exclusion, firing) in Said.Of<ExclusionConclusion>(_book, _fired))
        {
            var entry = new ExclusionReason(exclusion.Why, _tracer.Trace(firing));
            if (firing.Candidate >= 0)
                reasons[firing.Candidate].Add(entry);
            else
                reasons.ForEach(r => r.Add(entry));
        }
        foreach (var stop in stops.Where(s => s.Level == StopLevel.Today))
        {
            var allowed = stop.Trace.Rule.Conclusions.OfType<StopConclusion>().Where(s => s.Level == StopLevel.Today).Aggregate(ulong.MaxValue, (mask, s) => mask & s.Allowed);
            foreach (var variant in _book.Variants.Where(v => (allowed & (1UL << v.Index)) == 0))
                reasons[variant.Index].Add(new ExclusionReason(stop.Say, stop.Trace));
        }
        return [.. _book.Variants.Where(v => reasons[v.Index].Count > 0).Select(v => new Exclusion(v, reasons[v.Index]))];
    }

    // Who may not pull is not told how to pull; who may is told first what concerns safety.
    private List<AthleteCaution> Cautions(bool mayPull)
        => [.. AllCautions().Where(c => mayPull || SafetyTopics.Has(c.Trace.Rule)).OrderByDescending(c => SafetyTopics.Has(c.Trace.Rule))];

    private List<AthleteCaution> AllCautions()
        => [.. Said.Of<CautionConclusion>(_book, _fired).Where(c => c.Firing.Candidate < 0).Select(c => new AthleteCaution(c.Conclusion.Text, _tracer.Trace(c.Firing))).DistinctBy(c => c.Text)];

    private OpenRule Opened(Firing firing)
        => new(_tracer.Trace(firing), _tracer.Missing(firing), firing.Candidate < 0 ? null : _book.Variants[firing.Candidate].Id);

    private IEnumerable<string> Remarks()
    {
        if (BodyWords.WhyNotKnown(_builder.Body) is { } why)
            yield return why;
        if (_question.Room is null)
            yield return "No room file was given: every bar height in steps of the assumed size counts as possible, and kit is not checked.";
        if (_question.Standing is null)
            yield return "No standing choice was given: the block rule and the dead band of the set-up are off.";
        else if (_question.StandingInForce is null)
            yield return "The block of the standing choice is over: the choice is open.";
    }
}
