using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>At least one part holds.</summary>
public sealed class AnyCondition(IReadOnlyList<Condition> parts, string text, SourceSpan span)
    : Condition("any(" + string.Join(" | ", parts.Select(p => p.Key)) + ")", text, span)
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
        var truth = Truth.False;
        for (var i = 0; i < Parts.Count && truth != Truth.True; i++)
        {
            var part = Parts[i].Evaluate(view);
            if (part > truth)
                truth = part;
        }
        return truth;
    }
}
