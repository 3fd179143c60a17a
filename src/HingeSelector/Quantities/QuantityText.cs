using System.Globalization;
using System.Text.RegularExpressions;

namespace HingeSelector.Quantities;

/// <summary>Reads and prints numbers with units, as people type them.</summary>
public static partial class QuantityText
{
    /// <summary>Reads a number with its unit.</summary>
    /// <param name="text">For example <c>182 cm</c>, <c>1,82m</c>, <c>5'11"</c>, <c>65 deg</c>, <c>1.5 x body mass</c>.</param>
    /// <param name="dimension">What is expected.</param>
    /// <param name="assumed">Unit to take when none is written; null when a unit must be written.</param>
    /// <param name="value">The value in base units.</param>
    /// <param name="problem">What is wrong, as the end of a sentence; null when read.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryRead(string text, Dimension dimension, Unit? assumed, out double value, out string? problem)
    {
        value = 0;
        problem = null;
        text = text.Trim().Replace('’', '\'').Replace('”', '"').Replace('−', '-');
        if (dimension == Dimension.Length && FeetAndInches().Match(text) is { Success: true } feet)
            return TryReadFeetAndInches(feet, out value, out problem);
        var match = NumberThenUnit().Match(text);
        if (!match.Success)
        {
            problem = $"'{text}' is not a number{WithUnit(dimension)}";
            return false;
        }
        var digits = match.Groups["number"].Value;
        if (IsAmbiguous(digits))
        {
            problem = $"'{digits}' could mean a thousand or a decimal; write it without the mark or with two decimals";
            return false;
        }
        if (HasLeadingZero(digits))
        {
            problem = $"'{digits}' starts with a zero; write the number without it";
            return false;
        }
        if (!double.TryParse(digits.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            problem = $"'{text}' is not a number{WithUnit(dimension)}";
            return false;
        }
        return TryApplyUnit(number, match.Groups["unit"].Value.Trim(), dimension, assumed, out value, out problem);
    }

    private static bool TryApplyUnit(double number, string unitText, Dimension dimension, Unit? assumed, out double value, out string? problem)
    {
        value = number;
        problem = null;
        if (unitText.Length == 0)
        {
            if (dimension == Dimension.None)
                return true;
            if (assumed is null)
            {
                problem = $"the number has no unit; write {Expected(dimension)}";
                return false;
            }
            value = Rounded(number * assumed.Factor);
            return true;
        }
        var unit = Unit.Find(unitText);
        if (unit is null || unit.Dimension != dimension)
        {
            problem = unit is null
                ? $"'{unitText}' is not a unit that is known here; expected {Expected(dimension)}"
                : $"'{unitText}' measures {Name(unit.Dimension)}; expected {Expected(dimension)}";
            return false;
        }
        value = Rounded(number * unit.Factor);
        return true;
    }

    /// <summary>
    /// 57 cm times 0.01 is 0.5700000000000001 and 0.57 m is 0.57: without this a limit met exactly would depend on the unit
    /// in which somebody typed. Nine decimals are nanometres and micrograms.
    /// </summary>
    private static double Rounded(double value) => Math.Round(value, 9);

    /// <summary>Prints a value in a unit with no needless decimals.</summary>
    public static string Print(double value, Unit? unit)
    {
        if (unit is null)
            return value.ToString("0.###", CultureInfo.InvariantCulture);
        var number = Math.Round(value / unit.Factor, unit.Decimals, MidpointRounding.AwayFromZero) + 0.0;
        var text = number.ToString(unit.Decimals == 0 ? "0" : "0." + new string('#', unit.Decimals), CultureInfo.InvariantCulture);
        return $"{text} {unit.Symbol}";
    }

    /// <summary>The units in which a dimension may be written, for messages.</summary>
    public static string Expected(Dimension dimension)
    {
        var units = Unit.All.Where(u => u.Dimension == dimension).Select(u => u.Symbol).ToList();
        return units.Count == 0 ? "a bare number" : string.Join(", ", units.Take(units.Count - 1)) + (units.Count > 1 ? " or " : "") + units[^1];
    }

    private static string WithUnit(Dimension dimension) => dimension == Dimension.None ? "" : $" with a unit ({Expected(dimension)})";

    private static string Name(Dimension dimension) => dimension switch
    {
        Dimension.Angle => "an angle",
        Dimension.Length => "a length",
        Dimension.Mass => "a mass",
        Dimension.Time => "a time",
        Dimension.Rating => "a rating",
        Dimension.BodyMassMultiple => "a multiple of body mass",
        Dimension.Share => "a share",
        _ => "a bare number",
    };

    private static bool TryReadFeetAndInches(Match match, out double metres, out string? problem)
    {
        var feet = double.Parse(match.Groups["feet"].Value, CultureInfo.InvariantCulture);
        var inches = match.Groups["inches"].Success ? double.Parse(match.Groups["inches"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : 0;
        metres = Rounded((feet * Unit.Find("ft")!.Factor) + (inches * Unit.Find("in")!.Factor));
        problem = inches < 12 ? null : $"'{match.Value}' names {match.Groups["inches"].Value} inches beside the feet; a foot has 12";
        return problem is null;
    }

    // "1,820" is a thousand to some and 1.82 to others; "0,820" and "1,82" are decimals to all.
    private static bool IsAmbiguous(string digits) => Ambiguous().IsMatch(digits);

    private static bool HasLeadingZero(string digits) => LeadingZero().IsMatch(digits);

    [GeneratedRegex(@"^(?<number>[-+]?\d+(?:[.,]\d+)?)\s*(?<unit>\D.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"^(?<feet>\d)\s*(?:'|ft|feet|foot)\s*(?:(?<inches>\d{1,2}(?:[.,]\d+)?)\s*(?:""|''|in|inches)?)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FeetAndInches();

    [GeneratedRegex(@"^[1-9]\d{0,2},\d{3}$", RegexOptions.CultureInvariant)]
    private static partial Regex Ambiguous();

    [GeneratedRegex(@"^[-+]?0\d", RegexOptions.CultureInvariant)]
    private static partial Regex LeadingZero();
}
