using HingeSelector.Candidates;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Explaining;

/// <summary>One athlete decided anew with everything kept that an explanation looks at.</summary>
/// <param name="Cases">The fact tables, chosen set-ups included.</param>
/// <param name="Chosen">The chosen set-ups by place of the variant.</param>
/// <param name="Fired">Rules that hold, by the engine.</param>
/// <param name="Explained">The loop evaluator's view: findings in three values, and open rules.</param>
internal sealed record DecidedCase(CaseFacts Cases, IReadOnlyList<ChosenSetUp> Chosen, IReadOnlyList<Firing> Fired, Evaluation Explained)
{
    /// <summary>Decides.</summary>
    public static DecidedCase Of(RuleBook book, IRuleEngine engine, Question question)
    {
        var selector = new Selector(book, engine);
        var loop = new LoopEvaluator(book);
        var facts = selector.GatherFacts(question.Athlete, question);
        var (cases, candidates, table) = selector.SolveStandardPostures(facts, question);
        var session = engine.Start(cases);
        var decided = session.First();
        var chosen = selector.SearchSetUps(facts, question, candidates, decided);
        Selector.AddChosenPostures(cases, chosen, table);
        session.Second();
        // Findings that are open are told apart only by the loop evaluator.
        var explained = loop.First(cases);
        loop.Second(cases, explained);
        return new DecidedCase(cases, chosen, [.. decided.Fired.Order()], explained);
    }
}
