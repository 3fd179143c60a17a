using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Examples.Mutating;

/// <summary>Which mutants of some rules their examples notice.</summary>
/// <param name="Killed">Mutants that some example notices.</param>
/// <param name="Survivors">Mutants that no example notices.</param>
/// <param name="Equivalent">Mutants that ask the same as the rule wherever facts can lie; they are not counted.</param>
/// <param name="Conclusions">Mutants of points, criteria and stop levels; examples say nothing about conclusions, so they are not counted.</param>
public sealed record MutationReport(int Killed, IReadOnlyList<Mutant> Survivors, int Equivalent, int Conclusions)
{
    /// <summary>Mutants that count.</summary>
    public int Counted => Killed + Survivors.Count;

    /// <summary>Share that is noticed, %; 100 when there is nothing to notice.</summary>
    public double Percent => Counted == 0 ? 100 : 100.0 * Killed / Counted;

    /// <summary>Asks every mutant of some rules.</summary>
    /// <param name="book">The rule book.</param>
    /// <param name="rules">The rules with their examples.</param>
    public static MutationReport Of(RuleBook book, IEnumerable<RuleCases> rules)
    {
        var maker = new MutantMaker(book);
        var (killed, equivalent, conclusions) = (0, 0, 0);
        var survivors = new List<Mutant>();
        foreach (var rule in rules)
        {
            conclusions += ConclusionMutants(book, rule.Rule);
            foreach (var mutant in maker.Of(rule.Rule))
            {
                if (Equivalence.IsPlain(mutant))
                    equivalent++;
                else if (rule.Cases.Any(c => c.Decide(mutant.Changed) != c.Example.Expect))
                    killed++;
                else if (Equivalence.IsProven(book, mutant))
                    equivalent++;
                else
                    survivors.Add(mutant);
            }
        }
        return new MutationReport(killed, survivors, equivalent, conclusions);
    }

    // Points: one more, one less, the other sign, the next criterion. Stops: the two other levels.
    private static int ConclusionMutants(RuleBook book, Rule rule) => rule.Conclusions.Sum(c => c switch
    {
        PointsConclusion points => new[] { points.Amount + 1, points.Amount - 1, -points.Amount }.Distinct().Count(a => a is >= -3 and <= 3 and not 0) + (book.Criteria.Count > 1 ? 1 : 0),
        StopConclusion => 2,
        _ => 0,
    });
}
