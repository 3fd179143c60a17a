using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Evaluating;

/// <summary>Evaluates the compiled rules in plain loops: explains, searches and simulates. The decision of record is made elsewhere.</summary>
public sealed class LoopEvaluator : IRuleEngine
{
    private readonly RuleBook _book;
    private readonly Rule[] _athleteRules;
    private readonly (Rule Rule, int[] Variants)[] _alikeForAll;
    private readonly Rule[][] _firstByVariant;
    private readonly Rule[][] _secondByVariant;

    /// <summary>Sorts the rules of a book by when and for whom they are asked.</summary>
    public LoopEvaluator(RuleBook book)
    {
        _book = book;
        _athleteRules = [.. book.Rules.Where(r => !r.PerCandidate && !r.Finds)];
        _alikeForAll = [.. book.Rules.Where(AlikeForAll).Select(r => (r, book.Variants.Select(v => v.Index).Where(i => IsFor(r, i)).ToArray()))];
        _firstByVariant = ByVariant(book, r => !r.AfterSetUp && !AlikeForAll(r));
        _secondByVariant = ByVariant(book, r => r.AfterSetUp);
    }

    private static Rule[][] ByVariant(RuleBook book, Func<Rule, bool> wanted)
        => [.. book.Variants.Select(v => book.Rules.Where(r => r.PerCandidate && wanted(r) && IsFor(r, v.Index)).ToArray())];

    private static bool IsFor(Rule rule, int variant) => (rule.Variants & (1UL << variant)) != 0;

    // Once the variant's own words have settled for whom it is asked, it looks at the athlete alone: one answer for all of them.
    private static bool AlikeForAll(Rule rule) => rule.PerCandidate && !rule.OpenConditions.Any(c => c.Reads.Any(r => r.Word.OfCandidate));

    /// <inheritdoc/>
    public IRuleSession Start(CaseFacts facts) => new Session(this, facts);

    /// <summary>Decides all findings; then the rules of the athlete and those of the candidates that do not read the chosen set-up.</summary>
    public Evaluation First(CaseFacts facts)
    {
        var evaluation = new Evaluation(new Truth[_book.Findings.Count]);
        DecideFindings(facts, evaluation);
        var view = facts.View(Firing.OfAthlete, evaluation.Findings);
        foreach (var rule in _athleteRules)
            evaluation.Note(rule, Firing.OfAthlete, Holds(rule, view));
        foreach (var (rule, variants) in _alikeForAll)
        {
            var holds = Holds(rule, view);
            foreach (var variant in variants)
                evaluation.Note(rule, variant, holds);
        }
        Ask(_firstByVariant, facts, evaluation);
        return evaluation;
    }

    /// <summary>Decides the findings alone.</summary>
    public Truth[] FindingsOf(CaseFacts facts)
    {
        var evaluation = new Evaluation(new Truth[_book.Findings.Count]);
        DecideFindings(facts, evaluation);
        return evaluation.Findings;
    }

    /// <summary>Asks the rules that read the chosen set-up.</summary>
    public void Second(CaseFacts facts, Evaluation evaluation) => Ask(_secondByVariant, facts, evaluation);

    /// <summary>Rules of one candidate that read the chosen set-up and hold, for one more set-up of it.</summary>
    public IEnumerable<Firing> SecondOf(int candidate, FactView view)
        => _secondByVariant[candidate].Where(r => Holds(r, view) == Truth.True).Select(r => new Firing(r.Index, candidate));

    /// <summary>Whether all conditions of a rule hold.</summary>
    public static Truth Holds(Rule rule, in FactView view)
    {
        var truth = Truth.True;
        var conditions = rule.OpenConditions;
        for (var i = 0; i < conditions.Count && truth != Truth.False; i++)
        {
            var one = conditions[i].Evaluate(view);
            if (one < truth)
                truth = one;
        }
        return truth;
    }

    private static void Ask(Rule[][] byVariant, CaseFacts facts, Evaluation evaluation)
    {
        for (var candidate = 0; candidate < byVariant.Length; candidate++)
        {
            var view = facts.View(candidate, evaluation.Findings);
            foreach (var rule in byVariant[candidate])
                evaluation.Note(rule, candidate, Holds(rule, view));
        }
    }

    private void DecideFindings(CaseFacts facts, Evaluation evaluation)
    {
        var view = facts.View(Firing.OfAthlete, evaluation.Findings);
        var asked = new bool[_book.Rules.Count];
        foreach (var finding in _book.FindingOrder)
        {
            var truth = Truth.False;
            foreach (var index in _book.RulesOfFinding[finding])
            {
                var holds = Holds(_book.Rules[index], view);
                if (holds > truth)
                    truth = holds;
                if (!asked[index])
                    evaluation.Note(_book.Rules[index], Firing.OfAthlete, holds);
                asked[index] = true;
            }
            evaluation.Findings[finding] = truth;
        }
    }

    private sealed class Session(LoopEvaluator evaluator, CaseFacts facts) : IRuleSession
    {
        private Evaluation? _evaluation;

        public Evaluation First() => _evaluation = evaluator.First(facts);

        public void Second() => evaluator.Second(facts, _evaluation ?? throw new InvalidOperationException("The first stage comes first."));
    }
}
