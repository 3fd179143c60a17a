using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Examples;

/// <summary>A rule with its examples, tables filled.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Cases">The examples that come out as expected; one that does not shows nothing.</param>
public sealed record RuleCases(Rule Rule, IReadOnlyList<ExampleCase> Cases)
{
    /// <summary>Fills the tables of all rules whose examples all come out as expected.</summary>
    /// <exception cref="FaultyFilesException">An example is faulty or comes out otherwise: then coverage and mutants would say nothing.</exception>
    public static IReadOnlyList<RuleCases> Sound(RuleBook book, IReadOnlyList<Rule>? rules = null)
    {
        var bag = new DiagnosticBag();
        var cases = Of(book, rules ?? book.Rules, bag);
        return bag.HasErrors ? throw new FaultyFilesException(bag.Sorted) : cases;
    }

    /// <summary>Fills the tables of some rules; a rule without examples has no cases.</summary>
    /// <param name="book">The rule book.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="bag">Collects faults in the given facts and examples that come out otherwise than expected.</param>
    public static IReadOnlyList<RuleCases> Of(RuleBook book, IReadOnlyList<Rule> rules, DiagnosticBag bag)
    {
        var byRule = new ExampleRunner(book).Run(rules, bag).Where(r => r.Agrees).ToLookup(r => r.Rule.Index, r => r.Case!);
        return [.. rules.Select(r => new RuleCases(r, [.. byRule[r.Index]]))];
    }
}
