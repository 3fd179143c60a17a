using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>One answer to one word (one side of it, where it has sides).</summary>
/// <param name="Value">The value in base units, or the reason why there is none (refused, not applicable).</param>
/// <param name="On">Day of the answer.</param>
/// <param name="Until">Last day on which it counts, when given; null when the word's own lifetime decides.</param>
/// <param name="By">Who measured or asked; null when not said.</param>
/// <param name="Typed">As typed.</param>
/// <param name="Span">Where.</param>
public sealed record Answer(FactValue Value, DateOnly On, DateOnly? Until, string? By, string Typed, SourceSpan Span);
