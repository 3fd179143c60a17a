using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Examples.Mutating;

/// <summary>The changes of one word's demand. Words that share a line share its text, so the same change comes at the same place of each list.</summary>
internal static class LeafMutations
{
    /// <summary>Every change; an item is null where the change makes no sense for this word.</summary>
    public static IReadOnlyList<Mutation?> Of(Condition leaf) => leaf switch
    {
        NumberCondition number => OfNumber(number),
        ValuesCondition values => [.. OfValues(values)],
        FindingCondition finding => [OfFinding(finding)],
        _ => [],
    };

    private static Mutation OfFinding(FindingCondition finding)
    {
        var says = finding.Present ? "is absent" : "is present";
        return new Mutation(MutationKind.Negation, new FindingCondition(finding.Finding, !finding.Present, $"{finding.Text.Split(':')[0]}: {says}", finding.Span), finding, says);
    }

    private static List<Mutation?> OfNumber(NumberCondition number)
    {
        var interval = number.Interval;
        var word = number.Reading.Word;
        var found = new List<Mutation?>();
        var single = interval.Low.Equals(interval.High);
        foreach (var steps in new[] { -1, 1 })
        {
            if (double.IsFinite(interval.Low))
                found.Add(With(number, MutationKind.Threshold, interval with { Low = Steps.Move(word, interval.Low, steps), High = single ? Steps.Move(word, interval.High, steps) : interval.High }));
            if (double.IsFinite(interval.High) && !single)
                found.Add(With(number, MutationKind.Threshold, interval with { High = Steps.Move(word, interval.High, steps) }));
        }
        if (double.IsFinite(interval.Low) && !single)
            found.Add(With(number, MutationKind.Operator, interval with { LowIn = !interval.LowIn }));
        if (double.IsFinite(interval.High) && !single)
            found.Add(With(number, MutationKind.Operator, interval with { HighIn = !interval.HighIn }));
        found.Add(Opposite(number));
        return found;
    }

    private static Mutation? With(NumberCondition number, MutationKind kind, Interval interval)
    {
        if (interval.IsEmpty)
            return null;
        var says = ConditionText.Of(number.Reading.Word, interval);
        return new Mutation(kind, new NumberCondition(number.Reading, interval, $"{number.Reading}: {says}", number.Span), number, says);
    }

    private static Mutation Opposite(NumberCondition number)
    {
        var interval = number.Interval;
        var sides = new List<Interval>();
        if (double.IsFinite(interval.Low))
            sides.Add(Interval.Below(interval.Low, !interval.LowIn));
        if (double.IsFinite(interval.High))
            sides.Add(Interval.Above(interval.High, !interval.HighIn));
        var says = string.Join(" or ", sides.Select(s => ConditionText.Of(number.Reading.Word, s)));
        var parts = sides.Select(s => (Condition)new NumberCondition(number.Reading, s, $"{number.Reading}: {says}", number.Span)).ToList();
        return new Mutation(MutationKind.Negation, parts.Count == 1 ? parts[0] : new AnyCondition(parts, $"{number.Reading}: {says}", number.Span), number, says);
    }

    private static IEnumerable<Mutation?> OfValues(ValuesCondition values)
    {
        yield return With(values, MutationKind.Negation, values.Mask, !values.Wanted);
        var (word, mask) = (values.Reading.Word, values.Mask);
        // "is empty" names no value.
        if (word.Kind == WordKind.Set && mask == ConditionText.All(word))
            yield break;
        var next = word.MaskOf(NextNotListed(word, mask));
        for (var i = 0; i < word.RuleValues.Count; i++)
        {
            var one = word.MaskOf(i);
            if ((mask & one) == 0)
                continue;
            if (mask != one)
                yield return With(values, MutationKind.Value, mask & ~one, values.Wanted);
            if ((mask & next) == 0)
                yield return With(values, MutationKind.Value, (mask & ~one) | next, values.Wanted);
        }
        if ((mask & next) == 0)
            yield return With(values, MutationKind.Value, mask | next, values.Wanted);
    }

    /// <summary>The place of the value after the last listed one that is not listed itself; a listed one when all are.</summary>
    public static int NextNotListed(Word word, ulong mask)
    {
        var last = Enumerable.Range(0, word.RuleValues.Count).Last(i => (mask & word.MaskOf(i)) != 0);
        for (var step = 1; step <= word.RuleValues.Count; step++)
        {
            var place = (last + step) % word.RuleValues.Count;
            if ((mask & word.MaskOf(place)) == 0)
                return place;
        }
        return last;
    }

    private static Mutation With(ValuesCondition values, MutationKind kind, ulong mask, bool wanted)
    {
        var says = ConditionText.Of(values.Reading.Word, mask, wanted);
        return new Mutation(kind, new ValuesCondition(values.Reading, mask, wanted, $"{values.Reading}: {says}", values.Span), values, says);
    }
}
