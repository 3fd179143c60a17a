using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>A number lies in an interval.</summary>
public sealed class NumberCondition(WordReading reading, Interval interval, string text, SourceSpan span)
    : Condition($"{reading} in {interval}", text, span)
{
    private readonly int _slot = reading.Slot;
    private readonly bool _ofCandidate = reading.Word.OfCandidate;

    /// <summary>What is read.</summary>
    public WordReading Reading { get; } = reading;

    /// <summary>Where the number must lie.</summary>
    public Interval Interval { get; } = interval;

    /// <inheritdoc/>
    public override IEnumerable<WordReading> Reads => [Reading];

    /// <inheritdoc/>
    public override Truth Evaluate(in FactView view)
    {
        ref readonly var value = ref (_ofCandidate ? view.Candidate : view.Athlete)[_slot];
        return value.State switch
        {
            FactState.Known => Interval.Of(value.Low, value.High),
            FactState.NotApplicable => Truth.False,
            _ => Truth.Open,
        };
    }
}
