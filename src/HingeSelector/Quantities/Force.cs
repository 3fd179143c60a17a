using System.Globalization;

namespace HingeSelector.Quantities;

/// <summary>A force; held in newtons.</summary>
public readonly record struct Force : IComparable<Force>
{
    private Force(double value) => Newtons = value;

    /// <summary>The size in newtons.</summary>
    public double Newtons { get; }

    /// <summary>Zero.</summary>
    public static Force Zero => default;

    /// <summary>Makes one from newtons.</summary>
    /// <exception cref="ArgumentException">The value is not a number.</exception>
    public static Force FromNewtons(double value) => double.IsNaN(value) ? throw new ArgumentException("A force must be a number.", nameof(value)) : new(value);

    /// <summary>The sum of two.</summary>
    public static Force operator +(Force a, Force b) => new(a.Newtons + b.Newtons);

    /// <summary>The difference of two.</summary>
    public static Force operator -(Force a, Force b) => new(a.Newtons - b.Newtons);

    /// <summary>The same size with the other sign.</summary>
    public static Force operator -(Force a) => new(-a.Newtons);

    /// <summary>So many times this size.</summary>
    public static Force operator *(Force a, double factor) => new(a.Newtons * factor);

    /// <summary>How many times the second goes into the first.</summary>
    public static double operator /(Force a, Force b) => a.Newtons / b.Newtons;

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Force a, Force b) => a.Newtons < b.Newtons;

    /// <summary>Whether the first is larger.</summary>
    public static bool operator >(Force a, Force b) => a.Newtons > b.Newtons;

    /// <summary>Whether the first is smaller or equal.</summary>
    public static bool operator <=(Force a, Force b) => a.Newtons <= b.Newtons;

    /// <summary>Whether the first is larger or equal.</summary>
    public static bool operator >=(Force a, Force b) => a.Newtons >= b.Newtons;

    /// <inheritdoc/>
    public int CompareTo(Force other) => Newtons.CompareTo(other.Newtons);

    /// <summary>The size in newtons, with the unit's symbol, the same on every machine.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Newtons:0.####} N");
}
