using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>A column of a roster.</summary>
/// <param name="Kind">What it holds.</param>
/// <param name="Header">Its name as typed.</param>
internal sealed record RosterColumn(RosterColumnKind Kind, Typed Header)
{
    /// <summary>The word, for facts.</summary>
    public Word? Word { get; init; }

    /// <summary>The side, for facts with sides.</summary>
    public int Side { get; init; }

    /// <summary>Unit of a bare number; null when the word's own unit counts.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The group, for blanket answers.</summary>
    public WordGroup? Group { get; init; }
}
