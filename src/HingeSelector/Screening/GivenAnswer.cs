using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>An answer as it stands in a file, before dates and names of its section are filled in.</summary>
/// <param name="Word">The word.</param>
/// <param name="Side">0 for a word without sides and for the left side, 1 for the right side.</param>
/// <param name="Value">Value in base units, or the reason why there is none.</param>
/// <param name="Typed">As typed.</param>
/// <param name="Assumed">Unit that a bare number was read in.</param>
/// <param name="Key">Where the word or its column is named.</param>
internal sealed record GivenAnswer(Word Word, int Side, FactValue Value, Typed Typed, Unit? Assumed, SourceSpan Key)
{
    /// <summary>Own day, last day and name; they go before those of the section.</summary>
    public AnswerExtras Extras { get; init; } = AnswerExtras.None;

    /// <summary>The number in the unit in which it was taken to be typed; null unless it was typed without a unit.</summary>
    public double? BareNumber
        => Word.Kind == WordKind.Number && Value.IsKnown && !QuantityText.TryRead(Typed.Text, Word.Dimension, null, out _, out _)
            ? Value.Low / (Assumed?.Factor ?? 1)
            : null;
}
