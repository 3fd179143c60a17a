using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Analysis;

/// <summary>Every screen over the few facts of a small rule base, laid out by the same code that lays out a real screen.</summary>
internal sealed class EveryScreen
{
    private static readonly DateOnly _day = new(2026, 1, 1);

    private readonly RuleBook _book;
    private readonly LoopEvaluator _loop;
    private readonly FactValue[][] _candidates;

    public EveryScreen(RuleBook book, int kind)
    {
        _book = book;
        _loop = new LoopEvaluator(book);
        _candidates = [.. book.Variants.Select(Table)];
        Screens = [.. Answers(kind).Select(Lay)];
    }

    /// <summary>One entry a screen.</summary>
    public IReadOnlyList<Screen> Screens { get; }

    /// <summary>Whether a rule holds on a screen for a variant.</summary>
    public bool Holds(Rule rule, Screen screen, int variant)
        => (rule.Variants & (1UL << variant)) != 0 && LoopEvaluator.Holds(rule, new FactView(screen.Facts, _candidates[variant], screen.Findings)) == Truth.True;

    /// <summary>How a condition comes out on a screen, for the first variant.</summary>
    public Truth Of(Condition condition, Screen screen) => condition.Evaluate(new FactView(screen.Facts, _candidates[0], screen.Findings));

    private FactValue[] Table(Knowledge.Variant variant)
    {
        var table = new FactValue[_book.Vocabulary.CandidateSlots];
        foreach (var (slot, value) in variant.Words)
            table[slot] = value;
        table[_book.Vocabulary["variant"].Slot] = FactValue.Choice(variant.Index);
        return table;
    }

    private Screen Lay((AnswerKey Key, FactValue Value)[] answers)
    {
        var record = new AthleteRecord { Id = "a", Answers = answers.Where(a => a.Value != FactValue.Missing).ToDictionary(a => a.Key, a => new Answer(a.Value, _day, null, null, "", SourceSpan.None)) };
        var facts = FactTable.Build(record, _book.Vocabulary, _day, null);
        return new Screen(facts, _loop.FindingsOf(new CaseFacts(facts, _candidates)), Array.TrueForAll(answers, a => a.Value.IsKnown));
    }

    private IEnumerable<(AnswerKey, FactValue)[]> Answers(int kind) => kind switch
    {
        0 => Product(Sided("hip-flexion", Enumerable.Range(0, 17).Select(i => 75 + (2.5 * i))), Choice("throwing-side"), Choice("sex")),
        1 => Product(Set("history", "hernia", "hip-operation", "hip-operation left", "hip-operation right", "knee-operation left"), Numbers("age", [15, 16, 17, 18, 19], 24 * 365.25), Choice("throwing-side"), Choice("sex")),
        _ => Product(Sided("shoulder-pain-worst", [1, 2, 3, 4, 5]), Numbers("low-back-pain-at-rest", [1, 2, 3, 4, 5], 1), Numbers("low-back-pain-worst", [1, 2, 3, 4, 5], 1), Choice("sex")),
    };

    private static IEnumerable<(AnswerKey, FactValue)[]> Product(params IReadOnlyList<(AnswerKey, FactValue)[]>[] parts)
    {
        IEnumerable<(AnswerKey, FactValue)[]> all = [[]];
        foreach (var part in parts)
            all = all.SelectMany(a => part.Select(p => ((AnswerKey, FactValue)[])[.. a, .. p]));
        return all;
    }

    private static (AnswerKey, FactValue)[][] One(string word, IEnumerable<FactValue> values, int side = 0)
        => [.. values.Prepend(FactValue.Missing).Append(FactValue.NotApplicable).Select(v => new[] { (new AnswerKey(word, side), v) })];

    private static (AnswerKey, FactValue)[][] Numbers(string word, double[] values, double unit) => One(word, values.Select(v => FactValue.Number(Math.Round(v * unit, 9))));

    private (AnswerKey, FactValue)[][] Choice(string word) => One(word, Enumerable.Range(0, _book.Vocabulary[word].Values.Count).Select(FactValue.Choice));

    private static (AnswerKey, FactValue)[][] Sided(string word, IEnumerable<double> values)
    {
        var side = values.Select(FactValue.Number).ToList();
        return [.. Product(One(word, side, Sides.Left), One(word, side, Sides.Right))];
    }

    private (AnswerKey, FactValue)[][] Set(string word, params string[] items)
    {
        var bits = items.Select(i => 1UL << _book.Vocabulary[word].Values.ToList().IndexOf(i)).ToArray();
        return One(word, Enumerable.Range(0, 1 << bits.Length).Select(n => FactValue.Of(bits.Where((_, i) => (n >> i & 1) != 0).Aggregate(0UL, (a, b) => a | b))));
    }

    /// <param name="Facts">The fact table.</param>
    /// <param name="Findings">The findings.</param>
    /// <param name="Complete">Whether everything is known and applies.</param>
    internal sealed record Screen(FactValue[] Facts, Truth[] Findings, bool Complete);
}
