using System.Globalization;

namespace HingeSelector.Quantities;

/// <summary>A mass; held in kilograms.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double value) => Kilograms = value;

    /// <summary>The size in kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>Zero.</summary>
    public static Mass Zero => default;

    /// <summary>Makes one from kilograms.</summary>
    /// <exception cref="ArgumentException">The value is not a number.</exception>
    public static Mass FromKilograms(double value) => double.IsNaN(value) ? throw new ArgumentException("A mass must be a number.", nameof(value)) : new(value);

    /// <summary>The sum of two.</summary>
    public static Mass operator +(Mass a, Mass b) => new(a.Kilograms + b.Kilograms);

    /// <summary>The difference of two.</summary>
    public static Mass operator -(Mass a, Mass b) => new(a.Kilograms - b.Kilograms);

    /// <summary>The same size with the other sign.</summary>
    public static Mass operator -(Mass a) => new(-a.Kilograms);

    /// <summary>So many times this size.</summary>
    public static Mass operator *(Mass a, double factor) => new(a.Kilograms * factor);

    /// <summary>How many times the second goes into the first.</summary>
    public static double operator /(Mass a, Mass b) => a.Kilograms / b.Kilograms;

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Mass a, Mass b) => a.Kilograms < b.Kilograms;

    /// <summary>Whether the first is larger.</summary>
    public static bool operator >(Mass a, Mass b) => a.Kilograms > b.Kilograms;

    /// <summary>Whether the first is smaller or equal.</summary>
    public static bool operator <=(Mass a, Mass b) => a.Kilograms <= b.Kilograms;

    /// <summary>Whether the first is larger or equal.</summary>
    public static bool operator >=(Mass a, Mass b) => a.Kilograms >= b.Kilograms;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>The size in kilograms, with the unit's symbol, the same on every machine.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Kilograms:0.####} kg");
}
