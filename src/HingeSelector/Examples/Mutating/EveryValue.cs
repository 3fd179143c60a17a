using HingeSelector.Candidates;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Examples.Mutating;

/// <summary>Tries every combination of the values that a rule and its mutant can tell apart: one number an interval, every choice, known and unknown.</summary>
internal sealed class EveryValue
{
    private const int MostCombinations = 20_000;

    // More pieces than this make more sets than combinations may be tried.
    private const int MostPieces = 15;

    private readonly RuleBook _book;
    private readonly Mutant _mutant;
    private readonly FactValue[] _athlete;
    private readonly Truth[] _findings;
    private readonly List<(WordReading? Reading, int Finding, IReadOnlyList<FactValue> Values)> _free = [];

    /// <summary>Gathers the readings and findings that matter.</summary>
    public EveryValue(RuleBook book, Mutant mutant)
    {
        (_book, _mutant) = (book, mutant);
        _athlete = new FactValue[book.Vocabulary.AthleteSlots];
        _findings = new Truth[book.Findings.Count];
        var leaves = mutant.Rule.Conditions.Concat(mutant.Changed.Conditions).SelectMany(ConditionLine.LeavesOf).ToList();
        foreach (var reading in leaves.SelectMany(l => l.Reads).Distinct().Where(r => r.Word.About != WordAbout.Variant && r.Word.Id != "variant"))
            _free.Add((reading, -1, ValuesOf(reading, leaves)));
        foreach (var finding in leaves.SelectMany(l => l.Findings).Select(f => f.Finding).Distinct())
            _free.Add((null, finding, []));
    }

    /// <summary>Whether there is no difference; false also where there are too many combinations to try.</summary>
    public bool ShowsNoDifference()
    {
        var combinations = _free.Aggregate(1.0, (n, f) => n * (f.Reading is null ? 3 : f.Values.Count));
        var variants = _mutant.Rule.PerCandidate ? _book.Variants.Count : 1;
        if (combinations * variants > MostCombinations)
            return false;
        for (var variant = 0; variant < variants; variant++)
        {
            var candidate = _mutant.Rule.PerCandidate ? CandidateTable.Bare(_book.Vocabulary, _book.Variants[variant], _athlete, null, null) : [];
            if (Differs(0, variant, candidate))
                return false;
        }
        return true;
    }

    private bool Differs(int place, int variant, FactValue[] candidate)
    {
        if (place == _free.Count)
            return Decide(_mutant.Rule, variant, candidate) != Decide(_mutant.Changed, variant, candidate);
        var (reading, finding, values) = _free[place];
        if (reading is null)
        {
            foreach (var truth in new[] { Truth.False, Truth.Open, Truth.True })
            {
                _findings[finding] = truth;
                if (Differs(place + 1, variant, candidate))
                    return true;
            }
            return false;
        }
        var table = reading.Word.OfCandidate ? candidate : _athlete;
        foreach (var value in values)
        {
            table[reading.Slot] = value;
            if (Differs(place + 1, variant, candidate))
                return true;
        }
        return false;
    }

    private Truth Decide(Rule rule, int variant, FactValue[] candidate)
        => rule.PerCandidate && (rule.Variants & (1UL << variant)) == 0 ? Truth.False : LoopEvaluator.Holds(rule, new FactView(_athlete, candidate, _findings));

    private static List<FactValue> ValuesOf(WordReading reading, List<Condition> leaves)
    {
        var values = new List<FactValue> { FactValue.Missing, FactValue.NotApplicable };
        if (reading.Word.Kind == WordKind.Number)
            values.AddRange(NumbersOf(reading, leaves).Select(FactValue.Number));
        else if (reading.Word.Kind == WordKind.Choice)
            values.AddRange(Enumerable.Range(0, reading.Word.Values.Count).Select(FactValue.Choice));
        else
            values.AddRange(SetsOf(leaves.OfType<ValuesCondition>().Where(v => v.Reading == reading).Select(v => v.Mask)).Select(FactValue.Of));
        return values;
    }

    // The ends, and one number in every gap between them.
    private static IEnumerable<double> NumbersOf(WordReading reading, List<Condition> leaves)
    {
        var ends = leaves.OfType<NumberCondition>().Where(n => n.Reading == reading).SelectMany(n => new[] { n.Interval.Low, n.Interval.High }).Where(double.IsFinite).Distinct().Order().ToList();
        var range = Equivalence.RangeOf(reading);
        var numbers = new List<double>();
        for (var i = 0; i < ends.Count; i++)
        {
            numbers.Add(ends[i]);
            if (i > 0)
                numbers.Add((ends[i - 1] + ends[i]) / 2);
        }
        if (ends.Count > 0)
            numbers.AddRange([double.IsFinite(range.Low) ? (range.Low + ends[0]) / 2 : ends[0] - 1, double.IsFinite(range.High) ? (range.High + ends[^1]) / 2 : ends[^1] + 1]);
        return numbers.Where(range.Contains);
    }

    // A set matters only by which masks it meets: every union of one value out of each piece that the masks cut.
    private static IEnumerable<ulong> SetsOf(IEnumerable<ulong> masks)
    {
        var all = masks.Distinct().ToList();
        var pieces = Enumerable.Range(0, 64).Select(i => 1UL << i).Where(b => all.Exists(m => (m & b) != 0))
            .GroupBy(b => string.Concat(all.Select(m => (m & b) != 0 ? '1' : '0'))).Select(g => g.First()).ToList();
        return Enumerable.Range(0, 1 << Math.Min(pieces.Count, MostPieces)).Select(chosen => pieces.Where((_, i) => (chosen & (1 << i)) != 0).Aggregate(0UL, (set, b) => set | b));
    }
}
