using HingeSelector.Diagnostics;
using HingeSelector.Examples.Covering;
using HingeSelector.Examples.Mutating;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples.Proposing;

/// <summary>Proposes the examples that are missing: for every condition met, not met and unknown, both sides of every threshold, and one for every mutant that nobody notices.</summary>
/// <remarks>Each proposal changes one example of the author that fires; what the rule then does is found by running it.</remarks>
public sealed class Proposer
{
    private const int MostFacts = 6;

    private readonly RuleBook _book;
    private readonly CoverageNeeds _needs;
    private readonly MutantMaker _mutants;
    private readonly CaseBuilder _builder;

    /// <summary>Prepares to propose examples for rules of a book.</summary>
    public Proposer(RuleBook book)
    {
        _book = book;
        _needs = new CoverageNeeds(book);
        _mutants = new MutantMaker(book);
        // Whatever a trial change does wrong is no fault of the author: such a change is left aside.
        _builder = new CaseBuilder(book, new DiagnosticBag());
    }

    /// <summary>The fewest examples that show all that can be shown, in the order of the rule's examples.</summary>
    /// <param name="rule">The rule with its examples.</param>
    public IReadOnlyList<Proposal> For(RuleCases rule)
    {
        var missing = _needs.Of(rule.Rule).Where(i => !rule.Cases.Any(i.IsShownBy)).ToList();
        var alive = _mutants.Of(rule.Rule).Where(m => !Equivalence.IsPlain(m) && rule.Cases.All(c => c.Decide(m.Changed) == c.Example.Expect)).ToList();
        var chosen = new List<Proposal>();
        if (missing.Count + alive.Count == 0)
            return chosen;
        var trials = Trials(rule);
        while (Best(trials, missing, alive) is { } best)
        {
            var shows = missing.Where(best.Shows).ToList();
            var kills = alive.Where(best.Kills).ToList();
            missing.RemoveAll(best.Shows);
            alive.RemoveAll(best.Kills);
            chosen.Add(new Proposal(rule.Rule, best.Fired.Example, best.Change.Key(best.Found), best.Change.Item(best.Found, _book), best.Found, shows, kills));
        }
        return chosen;
    }

    private List<Trial> Trials(RuleCases rule)
    {
        var trials = new List<Trial>();
        foreach (var fired in rule.Cases.Where(c => c.Example is { Expect: Truth.True, IsChange: false }))
        {
            foreach (var change in new ChangeFinder(_book, fired).All())
            {
                if (_builder.Build(rule.Rule, change.Against(fired.Example, Truth.True)) is { } built && (built.Found != Truth.Open || change.Facts.Count > 0))
                    trials.Add(new Trial(fired, change, built));
            }
        }
        return trials;
    }

    // The most shown at once; of equals the one with the fewest facts, then the first.
    private static Trial? Best(List<Trial> trials, List<CoverageItem> missing, List<Mutant> alive)
    {
        Trial? best = null;
        var most = 0;
        foreach (var trial in trials)
        {
            var gain = (missing.Count(trial.Shows) + alive.Count(trial.Kills)) * 100;
            if (gain > 0 && gain - trial.Change.Facts.Count > most)
                (best, most) = (trial, gain - trial.Change.Facts.Count);
        }
        return best;
    }

    private sealed record Trial(ExampleCase Fired, Change Change, ExampleCase Case)
    {
        public Truth Found { get; } = Case.Found;

        // A fact that was taken away is shown where it leaves the rule open: there its absence is what matters.
        public bool Shows(CoverageItem item) => (item.Need == CoverageNeed.Unknown) == (Found == Truth.Open) && item.IsShownBy(Case);

        // What needs many facts at once is shown where nothing shorter shows it, but not for the sake of a mutant: nobody would read it.
        public bool Kills(Mutant mutant) => Change.Facts.Count <= MostFacts && (Found != Truth.Open || !Change.Facts.Any(f => f.IsUnknown)) && Case.Decide(mutant.Changed) != Found;
    }
}
