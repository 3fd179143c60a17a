using HingeSelector.Examples.Mutating;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Reading;
using HingeSelector.Words;

namespace HingeSelector.Examples.Proposing;

/// <summary>One fact that differs from the example: its name and its value, as an author writes them.</summary>
/// <param name="Name">Word, reading or finding.</param>
/// <param name="Value">The value.</param>
internal sealed record FactChange(string Name, string Value)
{
    /// <summary>Whether the fact is taken away.</summary>
    public bool IsUnknown => Value == ExampleReader.NotMeasured;

    /// <summary>The fact behind a condition taken away.</summary>
    public static FactChange Unknown(Condition leaf) => new(NameOf(leaf), ExampleReader.NotMeasured);

    /// <summary>The name that speaks for every word of a group.</summary>
    public static string AllOf(string group) => GivenReader.AllOfGroup + group;

    /// <summary>The values of the fact behind a condition that are worth a try: both sides of each end, listed and unlisted values.</summary>
    public static IEnumerable<FactChange> Edges(Condition leaf, FactView now)
    {
        switch (leaf)
        {
            case FindingCondition finding:
                return [new(NameOf(finding), finding.Present ? "is absent" : "is present"), new(NameOf(finding), finding.Present ? "is present" : "is absent")];
            case NumberCondition number:
                return Numbers(number).Select(v => new FactChange(number.Reading.ToString(), Steps.Print(number.Reading.Word, v)));
            case ValuesCondition values:
                return Bits(values, now[values.Reading].Bits).Distinct().Select(b => new FactChange(values.Reading.ToString(), values.Reading.Word.Print(FactValue.Of(b))));
            default:
                return [];
        }
    }

    /// <summary>The values of the fact behind a condition with which it holds, or fails.</summary>
    public static IEnumerable<FactChange> That(Condition leaf, Truth truth, FactView now) => leaf switch
    {
        FindingCondition finding => [new(NameOf(finding), finding.Present == (truth == Truth.True) ? "is present" : "is absent")],
        NumberCondition number => Numbers(number).Where(v => number.Interval.Contains(v) == (truth == Truth.True)).Select(v => new FactChange(number.Reading.ToString(), Steps.Print(number.Reading.Word, v))),
        // Any value will do, so that one which something else asks for can be shared.
        ValuesCondition values => Bits(values, now[values.Reading].Bits).Concat(Enumerable.Range(0, values.Reading.Word.RuleValues.Count).Select(i => 1UL << i)).Distinct()
            .Where(b => (b & values.Mask) != 0 == values.Wanted == (truth == Truth.True))
            .Select(b => new FactChange(values.Reading.ToString(), values.Reading.Word.Print(FactValue.Of(b)))),
        _ => [],
    };

    /// <summary>The reading or finding of a condition.</summary>
    public static string NameOf(Condition leaf) => leaf is FindingCondition ? leaf.Text.Split(':')[0] : leaf.Reads.First().ToString();

    private static IEnumerable<double> Numbers(NumberCondition number)
    {
        var range = Equivalence.RangeOf(number.Reading);
        return new[] { number.Interval.Low, number.Interval.High }.Where(double.IsFinite).Distinct()
            .SelectMany(e => new[] { e, Steps.Move(number.Reading.Word, e, 1), Steps.Move(number.Reading.Word, e, -1) }).Where(range.Contains);
    }

    private static IEnumerable<ulong> Bits(ValuesCondition values, ulong now)
    {
        var (word, mask) = (values.Reading.Word, values.Mask);
        var next = LeafMutations.NextNotListed(word, mask);
        var isSet = word.Kind == WordKind.Set;
        if ((mask & (1UL << next)) == 0)
            yield return 1UL << next;
        for (var i = 0; i < word.RuleValues.Count; i++)
        {
            if ((mask & (1UL << i)) != 0)
                yield return 1UL << i;
        }
        if (!isSet)
            yield break;
        // A set keeps what else it holds, for rules that ask it twice.
        yield return now & ~mask;
        yield return 0;
        yield return (now & ~mask) | (mask & (~mask + 1));
        if ((mask & (1UL << next)) == 0)
            yield return (now & ~mask) | (1UL << next);
    }
}
