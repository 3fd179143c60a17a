using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>Every part holds.</summary>
public sealed class AllCondition(IReadOnlyList<Condition> parts, string text, SourceSpan span)
    : Condition("all(" + string.Join(" & ", parts.Select(p => p.Key)) + ")", text, span)
{
    /// <summary>The parts.</summary>
    public IReadOnlyList<Condition> Parts { get; } = parts;

    /// <inheritdoc/>
    public override IEnumerable<WordReading> Reads => Parts.SelectMany(p => p.Reads);

    /// <inheritdoc/>
    public override IEnumerable<FindingRead> Findings => Parts.SelectMany(p => p.Findings);

    /// <inheritdoc/>
    public override Truth Evaluate(in FactView view)
    {
        var truth = Truth.True;
        for (var i = 0; i < Parts.Count && truth != Truth.False; i++)
        {
            var part = Parts[i].Evaluate(view);
            if (part < truth)
                truth = part;
        }
        return truth;
    }
}
