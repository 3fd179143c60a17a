namespace HingeSelector.Screening;

/// <summary>One held height of several: what was seen at the bar in one pull.</summary>
/// <param name="Variant">Place of the pull in the list of variants.</param>
/// <param name="Answers">Height, grip, stance, empty bar and weight, by the words of a single held height.</param>
public sealed record HeldEntry(int Variant, IReadOnlyDictionary<string, Answer> Answers);
