using System.Globalization;

namespace HingeSelector.Quantities;

/// <summary>A turning moment; held in newton metres.</summary>
public readonly record struct Moment : IComparable<Moment>
{
    private Moment(double value) => NewtonMetres = value;

    /// <summary>The size in newton metres.</summary>
    public double NewtonMetres { get; }

    /// <summary>Zero.</summary>
    public static Moment Zero => default;

    /// <summary>Makes one from newton metres.</summary>
    /// <exception cref="ArgumentException">The value is not a number.</exception>
    public static Moment FromNewtonMetres(double value) => double.IsNaN(value) ? throw new ArgumentException("A moment must be a number.", nameof(value)) : new(value);

    /// <summary>The sum of two.</summary>
    public static Moment operator +(Moment a, Moment b) => new(a.NewtonMetres + b.NewtonMetres);

    /// <summary>The difference of two.</summary>
    public static Moment operator -(Moment a, Moment b) => new(a.NewtonMetres - b.NewtonMetres);

    /// <summary>The same size with the other sign.</summary>
    public static Moment operator -(Moment a) => new(-a.NewtonMetres);

    /// <summary>So many times this size.</summary>
    public static Moment operator *(Moment a, double factor) => new(a.NewtonMetres * factor);

    /// <summary>How many times the second goes into the first.</summary>
    public static double operator /(Moment a, Moment b) => a.NewtonMetres / b.NewtonMetres;

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Moment a, Moment b) => a.NewtonMetres < b.NewtonMetres;

    /// <summary>Whether the first is larger.</summary>
    public static bool operator >(Moment a, Moment b) => a.NewtonMetres > b.NewtonMetres;

    /// <summary>Whether the first is smaller or equal.</summary>
    public static bool operator <=(Moment a, Moment b) => a.NewtonMetres <= b.NewtonMetres;

    /// <summary>Whether the first is larger or equal.</summary>
    public static bool operator >=(Moment a, Moment b) => a.NewtonMetres >= b.NewtonMetres;

    /// <inheritdoc/>
    public int CompareTo(Moment other) => NewtonMetres.CompareTo(other.NewtonMetres);

    /// <summary>The size in newton metres, with the unit's symbol, the same on every machine.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{NewtonMetres:0.####} N m");
}
