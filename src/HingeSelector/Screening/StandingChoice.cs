using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>What an athlete has been pulling in this block.</summary>
/// <param name="Athlete">Id of the athlete.</param>
/// <param name="Variant">Place of the variant in the catalogue.</param>
/// <param name="StartHeight">Height of the hands, m; null when not said.</param>
/// <param name="GripWidth">Between the middle fingers, m; null when not said.</param>
/// <param name="Since">First day.</param>
/// <param name="BlockEnds">Last day of the block; null when open.</param>
/// <param name="Span">Where.</param>
public sealed record StandingChoice(string Athlete, int Variant, double? StartHeight, double? GripWidth, DateOnly Since, DateOnly? BlockEnds, SourceSpan Span);
