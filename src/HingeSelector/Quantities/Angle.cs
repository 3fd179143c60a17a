using System.Globalization;

namespace HingeSelector.Quantities;

/// <summary>An angle; held in degrees.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double value) => Degrees = value;

    /// <summary>The size in degrees.</summary>
    public double Degrees { get; }

    /// <summary>Zero.</summary>
    public static Angle Zero => default;

    /// <summary>Makes one from degrees.</summary>
    /// <exception cref="ArgumentException">The value is not a number.</exception>
    public static Angle FromDegrees(double value) => double.IsNaN(value) ? throw new ArgumentException("An angle must be a number.", nameof(value)) : new(value);

    /// <summary>Makes one from radians.</summary>
    public static Angle FromRadians(double value) => new(double.RadiansToDegrees(value));

    /// <summary>The size in radians.</summary>
    public double Radians => double.DegreesToRadians(Degrees);

    /// <summary>The sum of two.</summary>
    public static Angle operator +(Angle a, Angle b) => new(a.Degrees + b.Degrees);

    /// <summary>The difference of two.</summary>
    public static Angle operator -(Angle a, Angle b) => new(a.Degrees - b.Degrees);

    /// <summary>The same size with the other sign.</summary>
    public static Angle operator -(Angle a) => new(-a.Degrees);

    /// <summary>So many times this size.</summary>
    public static Angle operator *(Angle a, double factor) => new(a.Degrees * factor);

    /// <summary>How many times the second goes into the first.</summary>
    public static double operator /(Angle a, Angle b) => a.Degrees / b.Degrees;

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Angle a, Angle b) => a.Degrees < b.Degrees;

    /// <summary>Whether the first is larger.</summary>
    public static bool operator >(Angle a, Angle b) => a.Degrees > b.Degrees;

    /// <summary>Whether the first is smaller or equal.</summary>
    public static bool operator <=(Angle a, Angle b) => a.Degrees <= b.Degrees;

    /// <summary>Whether the first is larger or equal.</summary>
    public static bool operator >=(Angle a, Angle b) => a.Degrees >= b.Degrees;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Degrees.CompareTo(other.Degrees);

    /// <summary>The size in degrees, with the unit's symbol, the same on every machine.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Degrees:0.####} deg");
}
