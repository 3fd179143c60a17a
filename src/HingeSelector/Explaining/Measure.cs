using HingeSelector.Knowledge;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Something that could still be measured or asked, and what it might change.</summary>
/// <param name="Word">The fact.</param>
/// <param name="IsExpired">Whether it was measured once and has run out.</param>
/// <param name="Minutes">Minutes that it takes; null when nobody has said.</param>
/// <param name="Chance">Share of the values that people show with which the first choice is another; null when no spread is on file.</param>
/// <param name="Becomes">Who may be first instead, the likeliest first.</param>
/// <param name="Spread">Where the spread comes from; null without one.</param>
/// <param name="Examples">Where there is no spread: values or answers with another first choice.</param>
public sealed record Measure(Word Word, bool IsExpired, double? Minutes, double? Chance, IReadOnlyList<Variant> Becomes, string? Spread, IReadOnlyList<string> Examples)
{
    /// <summary>Whether it may change the first choice at all.</summary>
    public bool MayChange => Becomes.Count > 0 || Chance > 0 || Examples.Count > 0;
}
