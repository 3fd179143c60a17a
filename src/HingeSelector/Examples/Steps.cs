using System.Globalization;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>The resolution of facts: the smallest difference that is written down.</summary>
public static class Steps
{
    // More decimals than any unit has; takes away what binary arithmetic adds.
    private const int MostDecimals = 9;

    // A threshold such as 0.25 years is finer than its unit is printed; nobody writes one finer than this.
    private const int FinestDecimals = 3;

    /// <summary>One step at a threshold, in base units: one in the last decimal of the unit, or of the threshold where that is finer; 1 for a count.</summary>
    /// <param name="word">The word.</param>
    /// <param name="end">The threshold in base units.</param>
    public static double Of(Word word, double end)
    {
        var factor = word.Unit?.Factor ?? 1;
        var decimals = word.Unit?.Decimals ?? 0;
        while (decimals < FinestDecimals && Math.Abs(Math.Round(end / factor, decimals) - (end / factor)) > 1e-6)
            decimals++;
        return Math.Round(Math.Pow(10, -decimals) * factor, MostDecimals);
    }

    /// <summary>The value some steps beyond a threshold.</summary>
    public static double Move(Word word, double end, int steps) => Math.Round(end + (steps * Of(word, end)), MostDecimals);

    /// <summary>A value with every decimal that it has, as an author writes it.</summary>
    public static string Print(Word word, double value)
    {
        var number = Math.Round(value / (word.Unit?.Factor ?? 1), 6) + 0.0;
        return number.ToString("0.######", CultureInfo.InvariantCulture) + (word.Unit is { } unit ? " " + unit.Symbol : "");
    }
}
