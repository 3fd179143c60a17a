using HingeSelector.Recommending;

namespace HingeSelector.Explaining;

/// <summary>What a simulation needs to know of an answer.</summary>
/// <param name="Outcome">What kind of answer.</param>
/// <param name="First">Place of the first choice in the catalogue; -1 when nothing may be pulled.</param>
/// <param name="Excluded">Variants that are out, one bit each.</param>
/// <param name="Totals">Weighted points by place; empty when nothing may be pulled.</param>
/// <param name="Signature">Equal for decisions that rest on the same rules.</param>
internal sealed record Decision(Outcome Outcome, int First, ulong Excluded, IReadOnlyList<int> Totals, ulong Signature)
{
    /// <summary>Whether another decision tells the coach the same first choice.</summary>
    public bool SameChoice(Decision other) => First == other.First && Outcome == other.Outcome;
}
