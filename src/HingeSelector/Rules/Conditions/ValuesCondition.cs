using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>A choice is one of some values, or a set holds at least one (or none) of some values.</summary>
/// <param name="reading">What is read.</param>
/// <param name="mask">One bit per value that counts.</param>
/// <param name="wanted">Whether at least one must be there; otherwise none may be.</param>
/// <param name="text">As written.</param>
/// <param name="span">Where.</param>
public sealed class ValuesCondition(WordReading reading, ulong mask, bool wanted, string text, SourceSpan span)
    : Condition($"{reading} {(wanted ? "has" : "lacks")} {mask:x}", text, span)
{
    private readonly int _slot = reading.Slot;
    private readonly bool _ofCandidate = reading.Word.OfCandidate;

    /// <summary>What is read.</summary>
    public WordReading Reading { get; } = reading;

    /// <summary>One bit per value that counts.</summary>
    public ulong Mask { get; } = mask;

    /// <summary>Whether at least one must be there; otherwise none may be.</summary>
    public bool Wanted { get; } = wanted;

    /// <inheritdoc/>
    public override IEnumerable<WordReading> Reads => [Reading];

    /// <inheritdoc/>
    public override Truth Evaluate(in FactView view)
    {
        ref readonly var value = ref (_ofCandidate ? view.Candidate : view.Athlete)[_slot];
        return value.State switch
        {
            FactState.Known => (value.Bits & Mask) != 0 == Wanted ? Truth.True : Truth.False,
            FactState.NotApplicable => Truth.False,
            _ => Truth.Open,
        };
    }
}
