using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>One row of a roster with the place of every cell.</summary>
/// <param name="Number">Number of the row as a spreadsheet shows it: the header is row 1, however many lines a cell takes.</param>
/// <param name="Cells">The cells, quotes taken off.</param>
/// <param name="Span">The row, as far as it lies on its first line.</param>
/// <param name="Fault">What made the row unreadable; null when it was read.</param>
internal sealed record CsvRow(int Number, IReadOnlyList<Typed> Cells, SourceSpan Span, Diagnostic? Fault)
{
    /// <summary>Whether nothing is written in it.</summary>
    public bool IsBlank => Fault is null && Cells.All(c => c.IsBlank);
}
