using HingeSelector.Candidates;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector;

/// <summary>START HERE: a screen goes in, a recommendation comes out, in five steps.</summary>
/// <remarks>Safe to share between threads: everything that changes is made anew for each athlete.</remarks>
public sealed class Selector
{
    private readonly RuleBook _book;
    private readonly IRuleEngine _engine;
    private readonly LoopEvaluator _loop;

    /// <summary>Takes the staff's rules and the engine of record.</summary>
    /// <param name="book">Read and checked rules.</param>
    /// <param name="engine">The engine that decides; the loop evaluator explains beside it.</param>
    public Selector(RuleBook book, IRuleEngine engine)
    {
        _book = book;
        _engine = engine;
        _loop = engine as LoopEvaluator ?? new LoopEvaluator(book);
    }

    /// <summary>The answer for one athlete.</summary>
    /// <exception cref="InvalidOperationException">The philosophy changes rules and the selector was made for the rules of another.</exception>
    public Recommendation Choose(Question question) => Choose(question, Lay(question));

    /// <summary>What the answer for one athlete rests on before any rule is asked.</summary>
    internal Groundwork Lay(Question question)
    {
        var facts = GatherFacts(question.Athlete, question);
        var builder = new CandidateBuilder(_book, facts, question.Room);
        var standard = builder.Standard();
        return new Groundwork(facts, builder, standard, new CandidateTable(_book, builder, standard));
    }

    /// <summary>The answer for one athlete on groundwork that was laid by rules with the same words, variants, model and assumptions.</summary>
    internal Recommendation Choose(Question question, Groundwork ground)
    {
        if (!ReferenceEquals(_book.Under(question.Philosophy), _book))
            throw new InvalidOperationException($"'{question.Philosophy.Id}' changes rules: make a selector for RuleBook.Under it.");
        var (facts, table) = (ground.Facts, ground.Table);
        var candidates = new Candidates(ground.Builder, ground.Standard);
        var cases = Cases(ground, question);
        var session = _engine.Start(cases);
        var evaluation = session.First();
        var chosen = SearchSetUps(facts, question, candidates, evaluation);
        AddChosenPostures(cases, chosen, table);
        session.Second();
        return new Assembly(_book, question, facts, cases, candidates.Builder, table, chosen, evaluation, ReferenceEquals(_engine, _loop) ? evaluation : null, _loop, sign => ScoresWithErrors(question, cases, chosen, ground, sign)).Recommend();
    }

    /// <summary>Step 1: answers become facts; what has expired is unknown.</summary>
    internal FactValue[] GatherFacts(AthleteRecord athlete, Question question) => AthleteFacts.Gather(_book, athlete, question.On, question.Room);

    /// <summary>Step 2: the posture of every variant at its standard set-up.</summary>
    internal (CaseFacts Cases, Candidates Candidates, CandidateTable Table) SolveStandardPostures(FactValue[] facts, Question question)
    {
        var builder = new CandidateBuilder(_book, facts, question.Room);
        var standard = builder.Standard();
        var ground = new Groundwork(facts, builder, standard, new CandidateTable(_book, builder, standard));
        return (Cases(ground, question), new Candidates(builder, standard), ground.Table);
    }

    private static CaseFacts Cases(Groundwork ground, Question question)
        => new(ground.Facts, [.. ground.Standard.Select(c => ground.Table.Start(c, ground.Facts, question.Room, question.StandingInForce))]);

    /// <summary>Step 4 (step 3, the rules that do not read the chosen set-up, is the engine's): one set-up search per variant inside the wishes.</summary>
    internal IReadOnlyList<ChosenSetUp> SearchSetUps(FactValue[] facts, Question question, Candidates candidates, Evaluation evaluation)
    {
        var wishes = WishList.Collect(_book, evaluation);
        return [.. candidates.Standard.Select(c => RaisedBars.SetDown(DeadBand.Apply(candidates.Builder, candidates.Builder.WithChoice(c, wishes[c.Variant.Index]), wishes[c.Variant.Index], question.StandingInForce)))];
    }

    /// <summary>Step 5: what the chosen set-ups ask becomes facts; then the engine gives points, cues and cautions.</summary>
    internal static void AddChosenPostures(CaseFacts cases, IReadOnlyList<ChosenSetUp> chosen, CandidateTable table)
    {
        foreach (var one in chosen)
            table.AddChoice(cases.Candidates[one.Candidate.Variant.Index], one.Candidate);
    }

    /// <summary>Scores of all candidates, set-ups as chosen, when every measure and the model are off by one standard error in the same direction.</summary>
    internal Scores ScoresWithErrors(Question question, CaseFacts cases, IReadOnlyList<ChosenSetUp> chosen, Groundwork ground, int sign)
    {
        var facts = ground.Shifted(sign, () => GatherFacts(ErrorScenario.Shift(question.Athlete, _book.Vocabulary, sign), question));
        var shifted = new CaseFacts(facts, [.. chosen.Select(c => ground.Table.Shifted(cases.Candidates[c.Candidate.Variant.Index], c.Candidate.Choice?.Margins, sign))]);
        var evaluation = _loop.First(shifted);
        _loop.Second(shifted, evaluation);
        return Scores.Of(_book, evaluation.Fired, question.Philosophy);
    }

    /// <summary>The candidates of one athlete with the builder that made them.</summary>
    internal sealed record Candidates(CandidateBuilder Builder, IReadOnlyList<Candidate> Standard);
}
