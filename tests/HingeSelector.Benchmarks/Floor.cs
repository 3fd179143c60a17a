using System.Numerics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Benchmarks;

/// <summary>The least that a decision can cost here: two-valued delegates over the same tables, first failure ends a rule, nothing is noted.</summary>
/// <remarks>Open counts as failed, so its answers are those of the deciders only for rules that hold; it serves as the measure of time.</remarks>
internal sealed class Floor
{
    private delegate bool Test(FactValue[] athlete, FactValue[] candidate, bool[] present, bool[] absent);

    private readonly RuleBook _book;
    private readonly Test[][] _rules;
    private readonly Test[][] _refutations;
    private readonly int[] _ofAthlete;
    private readonly (int Rule, int Variants)[] _alikeForAll;
    private readonly int[][] _ofCandidate;

    public Floor(RuleBook book)
    {
        _book = book;
        _rules = [.. book.Rules.Select(r => r.OpenConditions.Select(c => Compile(c, true)).ToArray())];
        _refutations = [.. book.Rules.Select(r => r.OpenConditions.Select(c => Compile(c, false)).ToArray())];
        _ofAthlete = [.. book.Rules.Where(r => !r.PerCandidate && !r.Finds).Select(r => r.Index)];
        _alikeForAll = [.. book.Rules.Where(r => r.PerCandidate && !ReadsCandidate(r)).Select(r => (r.Index, BitOperations.PopCount(r.Variants)))];
        _ofCandidate = [.. book.Variants.Select(v => book.Rules.Where(r => r.PerCandidate && ReadsCandidate(r) && (r.Variants & (1UL << v.Index)) != 0).Select(r => r.Index).ToArray())];
    }

    private static bool ReadsCandidate(Rule rule) => rule.OpenConditions.Any(c => c.Reads.Any(r => r.Word.OfCandidate));

    /// <summary>How many rules hold.</summary>
    public int Decide(CaseFacts facts)
    {
        var present = new bool[_book.Findings.Count];
        var absent = new bool[_book.Findings.Count];
        foreach (var finding in _book.FindingOrder)
        {
            var refuted = true;
            foreach (var rule in _book.RulesOfFinding[finding])
            {
                present[finding] |= All(_rules[rule], facts.Athlete, [], present, absent);
                refuted &= Any(_refutations[rule], facts.Athlete, [], present, absent);
            }
            absent[finding] = refuted;
        }
        var count = 0;
        foreach (var rule in _ofAthlete)
            count += All(_rules[rule], facts.Athlete, [], present, absent) ? 1 : 0;
        foreach (var (rule, variants) in _alikeForAll)
            count += All(_rules[rule], facts.Athlete, [], present, absent) ? variants : 0;
        for (var i = 0; i < _ofCandidate.Length; i++)
        {
            foreach (var rule in _ofCandidate[i])
                count += All(_rules[rule], facts.Athlete, facts.Candidates[i], present, absent) ? 1 : 0;
        }
        return count;
    }

    private static bool All(Test[] tests, FactValue[] athlete, FactValue[] candidate, bool[] present, bool[] absent)
    {
        foreach (var test in tests)
        {
            if (!test(athlete, candidate, present, absent))
                return false;
        }
        return true;
    }

    private static bool Any(Test[] tests, FactValue[] athlete, FactValue[] candidate, bool[] present, bool[] absent)
    {
        foreach (var test in tests)
        {
            if (test(athlete, candidate, present, absent))
                return true;
        }
        return false;
    }

    private static Test Compile(Condition condition, bool wanted)
    {
        switch (condition)
        {
            case NotCondition not:
                return Compile(not.Part, !wanted);
            case AllCondition all:
                return Group([.. all.Parts.Select(p => Compile(p, wanted))], wanted);
            case AnyCondition any:
                return Group([.. any.Parts.Select(p => Compile(p, wanted))], !wanted);
            case FindingCondition { Finding: var finding, Present: var asked }:
                return asked == wanted ? (_, _, present, _) => present[finding] : (_, _, _, absent) => absent[finding];
            case NumberCondition number:
                return Number(number, wanted);
            case ValuesCondition values:
                return Values(values, wanted);
            default:
                throw new NotSupportedException(condition.Key);
        }
    }

    private static Test Group(Test[] tests, bool all)
        => all ? (a, c, p, n) => All(tests, a, c, p, n) : (a, c, p, n) => Any(tests, a, c, p, n);

    private static Test Number(NumberCondition number, bool wanted)
    {
        var (slot, interval) = (number.Reading.Slot, number.Interval);
        var answer = wanted ? Truth.True : Truth.False;
        return number.Reading.Word.OfCandidate ? (_, c, _, _) => Is(c[slot]) : (a, _, _, _) => Is(a[slot]);

        bool Is(in FactValue value) => value.State == FactState.Known ? interval.Of(value.Low, value.High) == answer : value.State == FactState.NotApplicable && !wanted;
    }

    private static Test Values(ValuesCondition values, bool wanted)
    {
        var (slot, mask, has) = (values.Reading.Slot, values.Mask, values.Wanted == wanted);
        return values.Reading.Word.OfCandidate ? (_, c, _, _) => Is(c[slot]) : (a, _, _, _) => Is(a[slot]);

        bool Is(in FactValue value) => value.State == FactState.Known ? (value.Bits & mask) != 0 == has : value.State == FactState.NotApplicable && !wanted;
    }
}
