using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>A value that a condition read.</summary>
/// <param name="Name">The reading, or the finding.</param>
/// <param name="Value">The value in words.</param>
/// <param name="Distance">How far a number is from the nearest end of what is asked, in words; null where there is no distance.</param>
public sealed record ValueRead(string Name, string Value, string? Distance)
{
    /// <summary>Every value behind a condition.</summary>
    public static IEnumerable<ValueRead> Of(Condition condition, FactView view)
    {
        foreach (var leaf in ConditionLine.LeavesOf(condition))
        {
            yield return leaf switch
            {
                NumberCondition number => new ValueRead(number.Reading.ToString(), number.Reading.Word.Print(view[number.Reading]), DistanceOf(number, view[number.Reading])),
                ValuesCondition values => new ValueRead(values.Reading.ToString(), values.Reading.Word.Print(view[values.Reading]), null),
                FindingCondition finding => new ValueRead(finding.Text.Split(':')[0], OfFinding(view.Findings[finding.Finding]), null),
                _ => throw new InvalidOperationException($"'{leaf.Text}' is not the end of a condition."),
            };
        }
    }

    private static string OfFinding(Truth truth) => truth switch
    {
        Truth.True => "present",
        Truth.False => "absent",
        _ => "not known",
    };

    private static string? DistanceOf(NumberCondition number, FactValue value)
    {
        if (!value.IsExact)
            return null;
        var end = new[] { number.Interval.Low, number.Interval.High }.Where(double.IsFinite).OrderBy(e => Math.Abs(e - value.Low)).First();
        var word = number.Reading.Word;
        var apart = value.Low - end;
        return apart switch
        {
            0 => $"at {Steps.Print(word, end)}, which {(number.Interval.Contains(end) ? "counts" : "does not count")}",
            > 0 => $"{Steps.Print(word, apart)} above {Steps.Print(word, end)}",
            _ => $"{Steps.Print(word, -apart)} below {Steps.Print(word, end)}",
        };
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Name} {Value}{(Distance is null ? "" : ", " + Distance)}";
}
