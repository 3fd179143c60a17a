namespace HingeSelector.Quantities;

/// <summary>A unit that staff may write behind a number.</summary>
/// <param name="Symbol">The spelling in files and on pages.</param>
/// <param name="Dimension">What the unit measures.</param>
/// <param name="Factor">How many base units one of these is (see <see cref="Quantities.Dimension"/>).</param>
/// <param name="Decimals">Decimals worth printing for a measurement in this unit.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, int Decimals)
{
    /// <summary>One inch in metres; exact by the international yard and pound agreement of 1959.</summary>
    private const double Inch = 0.0254;

    /// <summary>One pound in kilograms; exact by the international yard and pound agreement of 1959.</summary>
    private const double Pound = 0.45359237;

    /// <summary>Every unit, the preferred one of each dimension first.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        new("deg", Dimension.Angle, 1, 0),
        new("cm", Dimension.Length, 0.01, 1),
        new("m", Dimension.Length, 1, 3),
        new("mm", Dimension.Length, 0.001, 0),
        new("in", Dimension.Length, Inch, 1),
        new("ft", Dimension.Length, 12 * Inch, 2),
        new("kg", Dimension.Mass, 1, 1),
        new("lb", Dimension.Mass, Pound, 1),
        new("hours", Dimension.Time, 1, 0),
        new("days", Dimension.Time, 24, 0),
        new("weeks", Dimension.Time, 168, 0),
        new("years", Dimension.Time, 24 * 365.25, 0),
        new("points", Dimension.Rating, 1, 0),
        new("x body mass", Dimension.BodyMassMultiple, 1, 2),
        new("%", Dimension.Share, 1, 0),
    ];

    /// <summary>Other spellings that are read, with the unit that each means.</summary>
    public static IReadOnlyDictionary<string, string> Spellings { get; } = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        ["degree"] = "deg",
        ["degrees"] = "deg",
        ["°"] = "deg",
        ["\""] = "in",
        ["inch"] = "in",
        ["inches"] = "in",
        ["'"] = "ft",
        ["feet"] = "ft",
        ["foot"] = "ft",
        ["lbs"] = "lb",
        ["pounds"] = "lb",
        ["hour"] = "hours",
        ["h"] = "hours",
        ["day"] = "days",
        ["week"] = "weeks",
        ["year"] = "years",
        ["point"] = "points",
        ["metres"] = "m",
        ["meters"] = "m",
        ["percent"] = "%",
    };

    /// <summary>Finds a unit by its symbol or another accepted spelling.</summary>
    /// <returns>The unit, or null when the text names none.</returns>
    public static Unit? Find(string text)
    {
        if (Spellings.TryGetValue(text, out var symbol))
            text = symbol;
        return All.FirstOrDefault(u => string.Equals(u.Symbol, text, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The unit in which a dimension is printed unless a word says otherwise; null for bare numbers.</summary>
    public static Unit? PreferredFor(Dimension dimension) => All.FirstOrDefault(u => u.Dimension == dimension);
}
