using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>A part fails for certain.</summary>
public sealed class NotCondition(Condition part, string text, SourceSpan span)
    : Condition($"not({part.Key})", text, span)
{
    /// <summary>The part.</summary>
    public Condition Part { get; } = part;

    /// <inheritdoc/>
    public override IEnumerable<WordReading> Reads => Part.Reads;

    /// <inheritdoc/>
    public override IEnumerable<FindingRead> Findings => Part.Findings.Select(f => f with { Present = !f.Present });

    /// <inheritdoc/>
    public override Truth Evaluate(in FactView view) => (Truth)(-(sbyte)Part.Evaluate(view));
}
