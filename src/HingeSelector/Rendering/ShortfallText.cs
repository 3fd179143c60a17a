using System.Globalization;
using HingeSelector.Explaining;
using HingeSelector.Quantities;

namespace HingeSelector.Rendering;

/// <summary>Says how far a condition is from turning out the other way.</summary>
public static class ShortfallText
{
    private const double Least = 0.1;
    private const int MostDecimals = 4;

    /// <summary>One phrase.</summary>
    public static string Of(Shortfall shortfall)
    {
        var now = shortfall is { Value: { } value, Word: { } read } ? Fine(value, read.Unit) : shortfall.Now;
        var said = shortfall.Now.StartsWith("is ", StringComparison.Ordinal) ? $"{shortfall.Label} {shortfall.Now}" : $"{shortfall.Label} is {now}";
        return shortfall is { Distance: { } distance, Needed: { } needed, Word: { } word }
            ? $"{said}, it turns at {Fine(needed, word.Unit)}: {Fine(distance, word.Unit)} away{(shortfall.InErrors is { } errors ? $" ({Errors(errors)})" : "")}"
            : said;
    }

    /// <summary>A distance in standard errors.</summary>
    public static string Errors(double errors) => errors < Least ? $"under {Least.ToString("0.0", CultureInfo.InvariantCulture)} errors" : $"{errors.ToString("0.0", CultureInfo.InvariantCulture)} errors";

    /// <summary>A number with at least one decimal more than is printed elsewhere, and as many as it takes to tell it from zero: a distance of 0.3 deg is not 0 deg.</summary>
    public static string Fine(double value, Unit? unit)
    {
        if (unit is null)
            return QuantityText.Print(value, null);
        var decimals = unit.Decimals + 1;
        while (decimals < MostDecimals && value != 0 && Math.Round(value / unit.Factor, decimals) == 0)
            decimals++;
        return QuantityText.Print(value, unit with { Decimals = decimals });
    }
}
