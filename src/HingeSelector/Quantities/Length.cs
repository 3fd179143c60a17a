using System.Globalization;

namespace HingeSelector.Quantities;

/// <summary>A length; held in metres.</summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(double value) => Metres = value;

    /// <summary>The size in metres.</summary>
    public double Metres { get; }

    /// <summary>Zero.</summary>
    public static Length Zero => default;

    /// <summary>Makes one from metres.</summary>
    /// <exception cref="ArgumentException">The value is not a number.</exception>
    public static Length FromMetres(double value) => double.IsNaN(value) ? throw new ArgumentException("A length must be a number.", nameof(value)) : new(value);

    /// <summary>Makes one from centimetres.</summary>
    public static Length FromCentimetres(double value) => new(value / 100);

    /// <summary>The size in centimetres.</summary>
    public double Centimetres => Metres * 100;

    /// <summary>The sum of two.</summary>
    public static Length operator +(Length a, Length b) => new(a.Metres + b.Metres);

    /// <summary>The difference of two.</summary>
    public static Length operator -(Length a, Length b) => new(a.Metres - b.Metres);

    /// <summary>The same size with the other sign.</summary>
    public static Length operator -(Length a) => new(-a.Metres);

    /// <summary>So many times this size.</summary>
    public static Length operator *(Length a, double factor) => new(a.Metres * factor);

    /// <summary>How many times the second goes into the first.</summary>
    public static double operator /(Length a, Length b) => a.Metres / b.Metres;

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Length a, Length b) => a.Metres < b.Metres;

    /// <summary>Whether the first is larger.</summary>
    public static bool operator >(Length a, Length b) => a.Metres > b.Metres;

    /// <summary>Whether the first is smaller or equal.</summary>
    public static bool operator <=(Length a, Length b) => a.Metres <= b.Metres;

    /// <summary>Whether the first is larger or equal.</summary>
    public static bool operator >=(Length a, Length b) => a.Metres >= b.Metres;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>The size in metres, with the unit's symbol, the same on every machine.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Metres:0.####} m");
}
