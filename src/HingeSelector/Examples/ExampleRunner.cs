using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Examples;

/// <summary>Runs the examples that stand inside the rules, on the real fact tables and the real posture model.</summary>
/// <param name="book">The rules.</param>
public sealed class ExampleRunner(RuleBook book)
{
    /// <summary>Runs every example of the book.</summary>
    /// <param name="bag">Collects faults in the given facts and examples that come out otherwise than expected.</param>
    public IReadOnlyList<ExampleResult> RunAll(DiagnosticBag bag) => Run(book.Rules, bag);

    /// <summary>Runs the examples of some rules.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="bag">Collects faults in the given facts and examples that come out otherwise than expected.</param>
    public IReadOnlyList<ExampleResult> Run(IEnumerable<Rule> rules, DiagnosticBag bag)
    {
        var builder = new CaseBuilder(book, bag);
        var reasons = new NamedReasons(book, bag);
        var results = new List<ExampleResult>();
        foreach (var rule in rules)
        {
            foreach (var example in rule.Tries)
            {
                var one = builder.Build(rule, example);
                var wrong = one is not null && one.Found == example.Expect ? reasons.Wrong(one) : null;
                var result = new ExampleResult(rule, example, one, wrong);
                results.Add(result);
                Report(result, bag);
            }
        }
        return results;
    }

    private static void Report(ExampleResult result, DiagnosticBag bag)
    {
        if (result is not { Case: { } one, Found: { } found } || result.Agrees)
            return;
        var example = result.Example;
        if (result.WrongReason is { } wrong)
            bag.Add(Problems.WrongReason(example.Because[0].Span, result.Rule.Id, string.Join(", ", example.Because.Select(b => b.Value)), wrong));
        else
            bag.Add(Problems.ExampleFails(example.At.Span, result.Rule.Id, ExampleText.Say(example.Expect), ExampleText.Say(found), string.Join("; ", LineState.Deciding(one).Take(3))));
    }
}
