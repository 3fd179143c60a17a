using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>One held height of several as it stands in a file.</summary>
/// <param name="Variant">Place of the pull in the list of variants.</param>
/// <param name="Answers">What was seen, by the words of a single held height.</param>
/// <param name="Span">Where the pull is named.</param>
internal sealed record GivenHeld(int Variant, IReadOnlyList<GivenAnswer> Answers, SourceSpan Span);
