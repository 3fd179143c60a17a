using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples.Covering;

/// <summary>One thing that the examples of a rule should show.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Line">The condition.</param>
/// <param name="Need">What is to be shown.</param>
/// <param name="End">The threshold in base units; NaN where none is meant.</param>
public sealed record CoverageItem(Rule Rule, ConditionLine Line, CoverageNeed Need, double End)
{
    /// <summary>Whether an example shows it.</summary>
    public bool IsShownBy(ExampleCase one) => Need switch
    {
        CoverageNeed.Met => Line.Condition.Evaluate(one.View) == Truth.True,
        CoverageNeed.NotMet => Line.Condition.Evaluate(one.View) == Truth.False,
        CoverageNeed.Unknown => Line.Condition.Evaluate(one.View) == Truth.Open,
        _ => Line.Leaves.Any(l => l is NumberCondition number && IsNear(number, one.View)),
    };

    private bool IsNear(NumberCondition number, FactView view)
    {
        var value = view[number.Reading];
        if (!value.IsExact || number.Interval.Contains(value.Low) != (Need == CoverageNeed.ThresholdInside))
            return false;
        // Half a thousandth of a step takes away what binary arithmetic adds.
        return Math.Abs(value.Low - End) <= Steps.Of(number.Reading.Word, End) * 1.0005;
    }

    /// <summary>What is to be shown, in words.</summary>
    public string Says => Need switch
    {
        CoverageNeed.Met => "met",
        CoverageNeed.NotMet => "not met",
        CoverageNeed.Unknown => "unknown",
        CoverageNeed.ThresholdInside => $"just inside {Print}",
        _ => $"just outside {Print}",
    };

    private string Print => Steps.Print(((NumberCondition)Line.Leaves.First(l => l is NumberCondition)).Reading.Word, End);
}
