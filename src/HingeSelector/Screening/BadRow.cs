using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>A row of a roster that cannot be used.</summary>
/// <param name="Row">Number of the row as a spreadsheet shows it; the header is row 1.</param>
/// <param name="Id">Id of the athlete; null when it is not known.</param>
/// <param name="Span">Where the row starts.</param>
/// <param name="Faults">All that is wrong with it.</param>
public sealed record BadRow(int Row, string? Id, SourceSpan Span, IReadOnlyList<Diagnostic> Faults);
