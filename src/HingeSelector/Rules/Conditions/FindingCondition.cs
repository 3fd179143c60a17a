using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>A finding is present, or is absent.</summary>
public sealed class FindingCondition(int finding, bool present, string text, SourceSpan span)
    : Condition($"finding {finding} {(present ? "present" : "absent")}", text, span)
{
    /// <summary>Index of the finding.</summary>
    public int Finding { get; } = finding;

    /// <summary>Whether presence is asked; otherwise absence.</summary>
    public bool Present { get; } = present;

    /// <inheritdoc/>
    public override IEnumerable<WordReading> Reads => [];

    /// <inheritdoc/>
    public override IEnumerable<FindingRead> Findings => [new(Finding, Present)];

    /// <inheritdoc/>
    public override Truth Evaluate(in FactView view) => Present ? view.Findings[Finding] : (Truth)(-(sbyte)view.Findings[Finding]);
}
