using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>What must hold, in the words of the rule language.</summary>
public static class ConditionText
{
    /// <summary>An interval: <c>below 65 deg</c>, <c>from 50 deg to 65 deg</c>.</summary>
    public static string Of(Word word, Interval interval)
    {
        var (low, high) = (Steps.Print(word, interval.Low), Steps.Print(word, interval.High));
        return (double.IsFinite(interval.Low), double.IsFinite(interval.High)) switch
        {
            (false, true) => $"{(interval.HighIn ? "at most" : "below")} {high}",
            (true, false) => $"{(interval.LowIn ? "at least" : "above")} {low}",
            (true, true) when interval.Low.Equals(interval.High) => $"exactly {low}",
            (true, true) when interval is { LowIn: true, HighIn: true } => $"from {low} to {high}",
            (true, true) when interval.LowIn => $"between {low} and {high}",
            (true, true) => $"above {low} and {(interval.HighIn ? "at most" : "below")} {high}",
            _ => "any number",
        };
    }

    /// <summary>Values of a choice or set: <c>is wide or medium</c>, <c>does not include hernia</c>.</summary>
    public static string Of(Word word, ulong mask, bool wanted)
    {
        var names = string.Join(" or ", word.RuleValues.Where((_, i) => (mask & word.MaskOf(i)) != 0));
        if (word.Kind == WordKind.Set)
            return mask == All(word) ? (wanted ? "is not empty" : "is empty") : (wanted ? "includes " : "does not include ") + names;
        return (wanted ? "is " : "is not ") + names;
    }

    /// <summary>One bit per value of a word.</summary>
    public static ulong All(Word word) => word.Values.Count == 64 ? ulong.MaxValue : (1UL << word.Values.Count) - 1;
}
