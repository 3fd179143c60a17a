using HingeSelector.Knowledge;

namespace HingeSelector.Explaining;

/// <summary>How often the first choice comes first when measures, model and unmeasured segments are drawn anew.</summary>
/// <param name="First">The first choice; null when nothing may be pulled, and then nothing is drawn.</param>
/// <param name="Draws">How many draws.</param>
/// <param name="Counts">Who came first how often, the most frequent first.</param>
/// <param name="NoPull">Draws in which nothing may be pulled.</param>
/// <param name="StaysByBlock">Whether the first choice is first because it is the variant of the block.</param>
public sealed record HowSure(Variant? First, int Draws, IReadOnlyList<(Variant Variant, int Count)> Counts, int NoPull, bool StaysByBlock)
{
    /// <summary>Draws of 100 under which there is no clear first.</summary>
    public const int ClearFrom = 60;

    /// <summary>Times of 100 that the first choice comes first, to the nearest whole.</summary>
    public int OfHundred => InHundred(Counts.FirstOrDefault(c => c.Variant == First).Count);

    /// <summary>Whether there is a clear first.</summary>
    public bool IsClear => First is not null && Counts.First(c => c.Variant == First).Count * 100 >= ClearFrom * Draws;

    /// <summary>A count as times of 100.</summary>
    public int InHundred(int count) => Draws == 0 ? 0 : (int)Math.Round(100.0 * count / Draws, MidpointRounding.AwayFromZero);
}
