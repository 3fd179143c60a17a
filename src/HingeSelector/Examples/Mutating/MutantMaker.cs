using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Examples.Mutating;

/// <summary>Makes the mutants of compiled rules; no file is read again.</summary>
internal sealed class MutantMaker(RuleBook book)
{
    private readonly VariantSorter _sorter = new(book.Vocabulary, book.Variants);

    /// <summary>Every mutant of a rule, each different question once.</summary>
    public IReadOnlyList<Mutant> Of(Rule rule)
    {
        var mutants = new List<Mutant>();
        for (var i = 0; i < rule.Conditions.Count; i++)
        {
            var condition = rule.Conditions[i];
            var seen = new HashSet<string>(StringComparer.Ordinal) { condition.Key };
            foreach (var mutation in Mutations.Of(condition))
            {
                if (seen.Add(mutation.Condition!.Key))
                    mutants.Add(Make(rule, i, mutation));
            }
            mutants.Add(Make(rule, i, new Mutation(MutationKind.Dropped, null, condition, "(left out)")));
        }
        return mutants;
    }

    private Mutant Make(Rule rule, int place, Mutation mutation)
    {
        var conditions = rule.Conditions.ToList();
        if (mutation.Condition is { } changed)
            conditions[place] = changed;
        else
            conditions.RemoveAt(place);
        var (variants, open) = _sorter.Settle(conditions);
        return new Mutant(rule, rule with { Conditions = conditions, OpenConditions = open, Variants = variants }, mutation);
    }
}
