using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>Runs the examples that stand inside the rules, on the real fact tables and the real posture model.</summary>
public sealed class ExampleRunner
{
    /// <summary>The day of every example; only its distance to given dates would matter, and examples give none.</summary>
    private static readonly DateOnly _day = new(2026, 1, 1);

    private readonly RuleBook _book;
    private readonly LoopEvaluator _loop;
    private readonly Selector _selector;

    /// <summary>Prepares to run the examples of a rule book.</summary>
    public ExampleRunner(RuleBook book)
    {
        _book = book;
        _loop = new LoopEvaluator(book);
        _selector = new Selector(book, _loop);
    }

    /// <summary>Runs every example of the book.</summary>
    /// <param name="bag">Collects faults in the given facts and examples that come out otherwise than expected.</param>
    public IReadOnlyList<ExampleResult> RunAll(DiagnosticBag bag)
    {
        var results = new List<ExampleResult>();
        foreach (var rule in _book.Rules)
        {
            foreach (var example in rule.Tries)
            {
                var result = Run(rule, example, bag);
                results.Add(result);
                if (result.Found is { } found && !result.Agrees)
                    bag.Add(Problems.ExampleFails(example.At.Span, rule.Id, example.At.Value, Say(found), result.Why));
            }
        }
        return results;
    }

    private ExampleResult Run(Rule rule, RuleExample example, DiagnosticBag bag)
    {
        var given = GivenFacts.Read(example.Given, _book, _day, bag);
        if (given is null)
            return new ExampleResult(rule, example, null, "");
        if (rule.PerCandidate && example.Variant is null)
        {
            bag.Add(Problems.MissingKey(example.At.Span, "for", "an example of a rule about candidates"));
            return new ExampleResult(rule, example, null, "");
        }
        var question = new Question(given.Athlete, null, null, _book.Philosophies.Values.First(), _day);
        var facts = _selector.GatherFacts(given.Athlete, question);
        given.WriteAthlete(facts);
        var cases = rule.PerCandidate ? WithCandidates(facts, question, given) : new CaseFacts(facts, []);
        var findings = _loop.FindingsOf(cases);
        foreach (var (finding, truth) in given.Findings)
            findings[finding] = truth;
        return Judge(rule, example, cases, findings);
    }

    private CaseFacts WithCandidates(FactValue[] facts, Question question, GivenFacts given)
    {
        var (cases, candidates, table) = _selector.SolveStandardPostures(facts, question);
        var evaluation = _loop.First(cases);
        Selector.AddChosenPostures(cases, _selector.SearchSetUps(facts, question, candidates, evaluation), table);
        foreach (var candidate in cases.Candidates)
            given.WriteCandidate(candidate);
        return cases;
    }

    private static ExampleResult Judge(Rule rule, RuleExample example, CaseFacts cases, Truth[] findings)
    {
        var candidate = rule.PerCandidate ? example.Variant!.Value : Firing.OfAthlete;
        if (candidate >= 0 && (rule.Variants & (1UL << candidate)) == 0)
            return new ExampleResult(rule, example, Truth.False, "The variant does not meet the conditions on its own words.");
        var view = cases.View(candidate, findings);
        var truth = LoopEvaluator.Holds(rule, view);
        var deciding = rule.OpenConditions.Where(c => c.Evaluate(view) == truth).Take(3);
        return new ExampleResult(rule, example, truth, string.Join("; ", deciding.Select(c => $"{c.Text} (read: {string.Join(", ", c.Reads.Take(4).Select(r => r.Word.Print(view[r])))})")));
    }

    private static string Say(Truth truth) => truth switch
    {
        Truth.True => "fires",
        Truth.False => "does not fire",
        _ => "is open",
    };
}
