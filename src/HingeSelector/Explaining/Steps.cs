using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>The values that people write for a number: whole steps of the last decimal that is worth printing.</summary>
internal readonly record struct Steps(double Size)
{
    /// <summary>Nine decimals, as where typed numbers are read: 57 times 0.01 is the same as 0.57.</summary>
    private const int Decimals = 9;

    /// <summary>The steps of a word.</summary>
    public static Steps Of(Word word) => new(word.Unit is { } unit ? unit.Factor * Math.Pow(10, -unit.Decimals) : 1);

    /// <summary>The value of a step.</summary>
    public double this[int step] => Math.Round(step * Size, Decimals);

    /// <summary>The last step at or below a value.</summary>
    public int AtOrBelow(double value) => (int)Math.Floor(Math.Round(value / Size, Decimals));

    /// <summary>The first step at or above a value.</summary>
    public int AtOrAbove(double value) => (int)Math.Ceiling(Math.Round(value / Size, Decimals));
}
