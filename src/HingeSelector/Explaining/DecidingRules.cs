using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>
/// The rules that bear on who comes first: findings, stops, exclusions, set-up changes and points. Cues, cautions and open rules
/// are left out, and nothing is noted but the sums, so that a simulation can ask thousands of times.
/// </summary>
/// <remarks>Immutable; safe to share between threads.</remarks>
internal sealed class DecidingRules
{
    private readonly RuleBook _book;
    private readonly Rule[] _athlete;
    private readonly Rule[][] _first;
    private readonly Rule[][] _second;

    public DecidingRules(RuleBook book)
    {
        _book = book;
        var deciding = book.Rules.Where(r => r.Conclusions.Any(Decides)).ToList();
        _athlete = [.. deciding.Where(r => !r.PerCandidate)];
        _first = ByVariant(book, deciding.Where(r => r.PerCandidate && !r.AfterSetUp));
        _second = ByVariant(book, deciding.Where(r => r.PerCandidate && r.AfterSetUp));
        Permitted = [.. book.Variants.Select(v => (IReadOnlySet<string>)WishList.Permitted(book, v))];
    }

    /// <summary>Set-up changes that each variant permits, by place.</summary>
    public IReadOnlyList<IReadOnlySet<string>> Permitted { get; }

    /// <summary>Decides the findings.</summary>
    public Truth[] Findings(FactValue[] athlete)
    {
        var findings = new Truth[_book.Findings.Count];
        var view = new FactView(athlete, [], findings);
        foreach (var finding in _book.FindingOrder)
        {
            var truth = Truth.False;
            foreach (var index in _book.RulesOfFinding[finding])
            {
                var holds = LoopEvaluator.Holds(_book.Rules[index], view);
                if (holds > truth)
                    truth = holds;
                if (truth == Truth.True)
                    break;
            }
            findings[finding] = truth;
        }
        return findings;
    }

    /// <summary>Asks the rules about the athlete.</summary>
    public void AskAthlete(FactValue[] athlete, Truth[] findings, Tally tally)
    {
        var view = new FactView(athlete, [], findings);
        foreach (var rule in _athlete)
        {
            if (LoopEvaluator.Holds(rule, view) == Truth.True)
                tally.Add(rule, Firing.OfAthlete);
        }
    }

    /// <summary>Asks the rules about one candidate that do not read its chosen set-up.</summary>
    public void AskFirst(int candidate, in FactView view, Tally tally) => Ask(_first[candidate], candidate, view, tally);

    /// <summary>Asks the rules about one candidate that read its chosen set-up.</summary>
    public void AskSecond(int candidate, in FactView view, Tally tally) => Ask(_second[candidate], candidate, view, tally);

    private static void Ask(Rule[] rules, int candidate, in FactView view, Tally tally)
    {
        foreach (var rule in rules)
        {
            if (LoopEvaluator.Holds(rule, view) == Truth.True)
                tally.Add(rule, candidate);
        }
    }

    private static bool Decides(Conclusion conclusion) => conclusion is StopConclusion or ExclusionConclusion or RequestConclusion or PointsConclusion;

    private static Rule[][] ByVariant(RuleBook book, IEnumerable<Rule> rules)
    {
        var all = rules.ToList();
        return [.. book.Variants.Select(v => all.Where(r => (r.Variants & (1UL << v.Index)) != 0).ToArray())];
    }
}
