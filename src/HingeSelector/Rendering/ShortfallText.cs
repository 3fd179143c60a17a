using System.Globalization;
using HingeSelector.Explaining;
using HingeSelector.Quantities;

namespace HingeSelector.Rendering;

/// <summary>Says how far a condition is from turning out the other way.</summary>
public static class ShortfallText
{
    /// <summary>One phrase.</summary>
    public static string Of(Shortfall shortfall)
    {
        var read = shortfall.Now.StartsWith("is ", StringComparison.Ordinal) ? $"{shortfall.Label} {shortfall.Now}" : $"{shortfall.Label} is {shortfall.Now}";
        return shortfall is { Distance: { } distance, Needed: { } needed, Word: { } word }
            ? $"{read}, it turns at {Fine(needed, word.Unit)}: {Fine(distance, word.Unit)} away{(shortfall.InErrors is { } errors ? $" ({Errors(errors)})" : "")}"
            : read;
    }

    /// <summary>A distance in standard errors.</summary>
    public static string Errors(double errors) => $"{errors.ToString("0.0", CultureInfo.InvariantCulture)} errors";

    /// <summary>A number with one decimal more than is printed elsewhere: a distance of 0.3 deg is not 0 deg.</summary>
    public static string Fine(double value, Unit? unit) => QuantityText.Print(value, unit is null ? null : unit with { Decimals = unit.Decimals + 1 });
}
