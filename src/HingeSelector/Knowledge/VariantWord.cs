using HingeSelector.Words;

namespace HingeSelector.Knowledge;

/// <summary>What a variant answers to one word of its own.</summary>
/// <param name="Slot">Place in the candidate's fact table.</param>
/// <param name="Value">The answer.</param>
public sealed record VariantWord(int Slot, FactValue Value);
