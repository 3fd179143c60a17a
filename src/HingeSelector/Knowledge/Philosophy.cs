using HingeSelector.Diagnostics;

namespace HingeSelector.Knowledge;

/// <summary>What a staff puts first: an overlay that names only what it changes of the base. Here its weights; its rules are an <c>Overlay</c> of the rule book.</summary>
/// <param name="Id">Name.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Summary">What it stands for.</param>
/// <param name="Weights">Whole weights of zero or more, by place of the criterion: those of the base with the changes in.</param>
/// <param name="Changes">The weights that it changes.</param>
/// <param name="ChangesRules">Whether it changes, switches off or adds rules.</param>
/// <param name="Span">Where.</param>
public sealed record Philosophy(string Id, string Label, string Summary, IReadOnlyList<int> Weights, IReadOnlyList<WeightChange> Changes, bool ChangesRules, SourceSpan Span)
{
    /// <summary>The smallest weight that is not zero: one step of a single weight; a smaller lead is a tie.</summary>
    public int SmallestStep { get; } = Weights.Where(w => w > 0).DefaultIfEmpty(1).Min();
}
