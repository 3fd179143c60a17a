using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Everything that led to the score of one variant for one athlete: decided anew by the same engine on the same facts.</summary>
public sealed class Derivation
{
    private Derivation(Variant variant, IReadOnlyList<DerivedRule> rules, IReadOnlyList<OpenRule> open, IReadOnlyList<CriterionSum> sums, IReadOnlyList<(Rule Rule, RuleChange Change)> switchedOff)
        => (Variant, Rules, Open, Sums, SwitchedOff) = (variant, rules, open, sums, switchedOff);

    /// <summary>The variant.</summary>
    public Variant Variant { get; }

    /// <summary>Rules that hold for the variant or for the athlete, in order of id.</summary>
    public IReadOnlyList<DerivedRule> Rules { get; }

    /// <summary>Rules about the variant or the athlete that cannot be decided.</summary>
    public IReadOnlyList<OpenRule> Open { get; }

    /// <summary>Points by criterion.</summary>
    public IReadOnlyList<CriterionSum> Sums { get; }

    /// <summary>Rules of the base that would hold, had the philosophy not switched them off.</summary>
    public IReadOnlyList<(Rule Rule, RuleChange Change)> SwitchedOff { get; }

    /// <summary>The score: what the sums add up to.</summary>
    public int Total => Sums.Sum(s => s.Weighted);

    /// <summary>Derives.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="engine">The engine of record.</param>
    /// <param name="question">The question.</param>
    /// <param name="variant">The variant.</param>
    public static Derivation Of(RuleBook book, IRuleEngine engine, Question question, Variant variant)
    {
        var decided = DecidedCase.Of(book, engine, question);
        var (cases, explained) = (decided.Cases, decided.Explained);
        var fired = decided.Fired.Where(f => f.Candidate < 0 || f.Candidate == variant.Index).ToList();
        var tracer = new Tracer(book, cases, explained.Findings);
        return new Derivation(
            variant,
            [.. fired.Select(f => new DerivedRule(book.Rules[f.Rule], Conditions(book, book.Rules[f.Rule], cases.View(RuleSubject(book, f, variant), explained.Findings))))],
            [.. explained.Open.Where(f => f.Candidate < 0 || f.Candidate == variant.Index).Order().Select(f => new OpenRule(tracer.Trace(f), tracer.Missing(f), f.Candidate < 0 ? null : variant.Id))],
            Sum(book, fired, question.Philosophy),
            WouldHold(book, variant, cases, explained.Findings));
    }

    private static List<(Rule, RuleChange)> WouldHold(RuleBook book, Variant variant, CaseFacts cases, Truth[] findings)
    {
        bool Holds(Rule rule) => (!rule.PerCandidate || (rule.Variants & (1UL << variant.Index)) != 0)
            && LoopEvaluator.Holds(rule, cases.View(rule.PerCandidate ? variant.Index : Firing.OfAthlete, findings)) == Truth.True;
        return [.. (book.InForce?.SwitchedOff ?? []).Where(Holds).Select(r => (r, book.InForce!.Changes.First(c => c.Rule == r.Id)))];
    }

    private static int RuleSubject(RuleBook book, Firing firing, Variant variant) => book.Rules[firing.Rule].PerCandidate ? variant.Index : firing.Candidate;

    private static List<CriterionSum> Sum(RuleBook book, List<Firing> fired, Philosophy philosophy)
    {
        var lines = fired.SelectMany(f => book.Rules[f.Rule].Conclusions.OfType<PointsConclusion>()).ToList();
        var sums = new List<CriterionSum>();
        foreach (var criterion in book.Criteria)
        {
            var amounts = lines.Where(l => l.Criterion == criterion.Index).Select(l => l.Amount).ToList();
            sums.Add(new CriterionSum(criterion, amounts, Math.Clamp(amounts.Sum(), -Most, Most), philosophy.Weights[criterion.Index]));
        }
        return sums;
    }

    private const int Most = 3;

    private static List<(string, IReadOnlyList<FactRead>)> Conditions(RuleBook book, Rule rule, FactView view)
        => [.. rule.Conditions.Select(c => (c.Text, (IReadOnlyList<FactRead>)[.. Facts(book, c, view).Distinct()]))];

    private static IEnumerable<FactRead> Facts(RuleBook book, Condition condition, FactView view)
    {
        // Of a condition with several ways to hold only those that hold are told.
        if (condition is AnyCondition any && any.Parts.Any(p => p.Evaluate(view) == Truth.True))
            return any.Parts.Where(p => p.Evaluate(view) == Truth.True).SelectMany(p => Facts(book, p, view));
        return condition.Reads.Select(r => new FactRead(r.ToString(), Label(r), r.Word.Print(view[r])))
            .Concat(condition.Findings.Select(f => new FactRead(book.Findings[f.Finding].Id, book.Findings[f.Finding].Label, Said(view.Findings[f.Finding]))));
    }

    private static string Label(WordReading reading) => reading.Name is null ? reading.Word.Label : $"{reading.Word.Label}, {reading.Name}";

    private static string Said(Truth truth) => truth switch
    {
        Truth.True => "is present",
        Truth.False => "is absent",
        _ => "is not decided",
    };
}
