using HingeSelector.Diagnostics;

namespace HingeSelector.Knowledge;

/// <summary>How much each criterion counts.</summary>
/// <param name="Id">Name of the file.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Summary">What it stands for.</param>
/// <param name="Weights">Whole weights of zero or more, by place of the criterion.</param>
/// <param name="Span">Where.</param>
public sealed record Philosophy(string Id, string Label, string Summary, IReadOnlyList<int> Weights, SourceSpan Span)
{
    /// <summary>The smallest weight that is not zero: one step of a single weight; a smaller lead is a tie.</summary>
    public int SmallestStep { get; } = Weights.Where(w => w > 0).DefaultIfEmpty(1).Min();
}
