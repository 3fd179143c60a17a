using HingeSelector.Candidates;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Decides who comes first, and nothing else: the same steps as <see cref="Selector"/> without reasons, bands and traces.</summary>
/// <remarks>A property test holds it against the selector. Safe to share between threads.</remarks>
internal sealed class Decider
{
    private readonly RuleBook _book;
    private readonly DecidingRules _rules;
    private readonly HeightLists _heights;
    private readonly Question _question;
    private readonly Word _new;
    private readonly Postures _postures;

    private Decider(RuleBook book, DecidingRules rules, HeightLists heights, Question question)
    {
        (_book, _rules, _heights, _question) = (book, rules, heights, question);
        _new = book.Vocabulary["new-to-athlete"];
        Facts = Gather(question.Athlete);
        _postures = new Postures(book, Facts, heights, question.StandingInForce);
        Base = Decide(Facts, _postures);
    }

    /// <summary>The fact table of the athlete as asked about; not to be written to.</summary>
    public FactValue[] Facts { get; }

    /// <summary>The decision for the athlete as asked about.</summary>
    public Decision Base { get; }

    /// <summary>Prepares to decide about one athlete.</summary>
    public static Decider For(RuleBook book, Question question)
        => new(book, new DecidingRules(book), new HeightLists(question.Room, book.Assumptions), question);

    /// <summary>Where the held height of the first choice may lie; null when the model cannot say.</summary>
    public PlausibleValues? HeldHeights()
    {
        var tally = new Tally(_book.Variants.Count, _book.Criteria.Count);
        var findings = _rules.Findings(Facts);
        _rules.AskAthlete(Facts, findings, tally);
        _rules.AskFirst(Base.First, new FactView(Facts, _postures.Tables[Base.First], findings), tally);
        var wishes = SetUpWishes.Merge(tally.Requests(Base.First), _rules.Permitted[Base.First]);
        return new HeldHeights(_book, _question, _heights).Of(_postures.Choose(Base.First, wishes).Candidate, wishes);
    }

    /// <summary>The same rules asked about another body or another record of the athlete.</summary>
    /// <param name="book">The same rule book with another model.</param>
    /// <param name="athlete">The athlete.</param>
    public Decision DecideWith(RuleBook book, AthleteRecord athlete) => new Decider(book, _rules, _heights, _question with { Athlete = athlete }).Base;

    /// <summary>The decision with other answers of the same athlete.</summary>
    public Decision Decide(AthleteRecord athlete)
    {
        var facts = Gather(athlete);
        return Decide(facts, _postures.Serve(facts) ? _postures : new Postures(_book, facts, _heights, _question.StandingInForce));
    }

    /// <summary>Whether anything is worked out from a fact: a posture, or another fact of the athlete.</summary>
    /// <param name="word">The fact.</param>
    /// <param name="far">The athlete with that fact at the far end of its range.</param>
    public bool WorksOut(Word word, AthleteRecord far)
    {
        if (Postures.Words.Contains(word.Id))
            return true;
        var facts = Gather(far);
        return _book.Vocabulary.Words.Any(w => w.About == WordAbout.Computed && facts[w.Slot] != Facts[w.Slot]);
    }

    private FactValue[] Gather(AthleteRecord athlete) => AthleteFacts.Gather(_book, athlete, _question.On, _question.Room);

    private Decision Decide(FactValue[] facts, Postures postures)
    {
        var findings = _rules.Findings(facts);
        var tally = new Tally(_book.Variants.Count, _book.Criteria.Count);
        _rules.AskAthlete(facts, findings, tally);
        var outcome = OutcomeOf(tally, facts);
        if (outcome is not (Outcome.Ranked or Outcome.LimitedToday))
            return new Decision(outcome, -1, ulong.MaxValue, [], tally.Signature);
        for (var v = 0; v < _book.Variants.Count; v++)
            _rules.AskFirst(v, new FactView(facts, postures.Tables[v], findings), tally);
        var standing = AskSecond(facts, postures, findings, tally);
        var totals = tally.Totals(_question.Philosophy);
        var all = _book.Variants.Count == 64 ? ulong.MaxValue : (1UL << _book.Variants.Count) - 1;
        return new Decision(outcome, First(totals, tally.Excluded, postures, standing), tally.Excluded & all, totals, tally.Signature);
    }

    private Candidate? AskSecond(FactValue[] facts, Postures postures, Truth[] findings, Tally tally)
    {
        Candidate? standing = null;
        for (var v = 0; v < _book.Variants.Count; v++)
        {
            var (candidate, table) = postures.Choose(v, SetUpWishes.Merge(tally.Requests(v), _rules.Permitted[v]));
            _rules.AskSecond(v, new FactView(facts, table, findings), tally);
            if (_question.StandingInForce?.Variant == v)
                standing = candidate;
        }
        return standing;
    }

    private Outcome OutcomeOf(Tally tally, FactValue[] facts) => tally.Stop switch
    {
        StopLevel.Emergency => Outcome.Emergency,
        StopLevel.Refer => Outcome.Refer,
        _ when Holds.Unanswered(_book.Vocabulary, facts).Count > 0 => Outcome.Held,
        StopLevel.Today => Outcome.LimitedToday,
        _ => Outcome.Ranked,
    };

    // The order of the ranking: points, then what has been taught, then the catalogue; the variant of the block stays first.
    private int First(int[] totals, ulong excluded, Postures postures, Candidate? standing)
    {
        if (standing is not null && (excluded & (1UL << standing.Variant.Index)) == 0 && !Ranking.NoLongerFits(standing))
            return standing.Variant.Index;
        var first = -1;
        for (var v = 0; v < totals.Length; v++)
        {
            if ((excluded & (1UL << v)) != 0)
                continue;
            if (first < 0 || totals[v] > totals[first] || (totals[v] == totals[first] && IsNew(postures, first) && !IsNew(postures, v)))
                first = v;
        }
        return first;
    }

    private bool IsNew(Postures postures, int variant) => postures.Tables[variant][_new.Slot] is { IsKnown: true, Bits: 2 };
}
