using System.Globalization;

namespace HingeSelector.Rules.Conditions;

/// <summary>An interval of numbers in base units.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="LowIn">Whether the lower end belongs to it.</param>
/// <param name="High">Upper end.</param>
/// <param name="HighIn">Whether the upper end belongs to it.</param>
public readonly record struct Interval(double Low, bool LowIn, double High, bool HighIn)
{
    /// <summary>Every number below an end.</summary>
    public static Interval Below(double end, bool included) => new(double.NegativeInfinity, false, end, included);

    /// <summary>Every number above an end.</summary>
    public static Interval Above(double end, bool included) => new(end, included, double.PositiveInfinity, false);

    /// <summary>Whether no number belongs to it.</summary>
    public bool IsEmpty => Low > High || (Low.Equals(High) && !(LowIn && HighIn));

    /// <summary>Whether a number belongs to it.</summary>
    public bool Contains(double value) => (value > Low || (LowIn && value.Equals(Low))) && (value < High || (HighIn && value.Equals(High)));

    /// <summary>What belongs to both.</summary>
    public Interval Intersect(Interval other)
    {
        var low = Low > other.Low ? (Low, LowIn) : Low < other.Low ? (other.Low, other.LowIn) : (Low, LowIn && other.LowIn);
        var high = High < other.High ? (High, HighIn) : High > other.High ? (other.High, other.HighIn) : (High, HighIn && other.HighIn);
        return new Interval(low.Item1, low.Item2, high.Item1, high.Item2);
    }

    /// <summary>Whether a value known only within bounds belongs to it.</summary>
    public Truth Of(double low, double high)
    {
        if (low.Equals(high))
            return Contains(low) ? Truth.True : Truth.False;
        // The ends of the bounds belong to the possible values, except where they are infinite.
        var overlap = Intersect(new Interval(low, double.IsFinite(low), high, double.IsFinite(high)));
        if (overlap.IsEmpty)
            return Truth.False;
        var lowInside = double.IsNegativeInfinity(low) ? double.IsNegativeInfinity(Low) : Contains(low);
        var highInside = double.IsPositiveInfinity(high) ? double.IsPositiveInfinity(High) : Contains(high);
        return lowInside && highInside ? Truth.True : Truth.Open;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{(LowIn ? '[' : '(')}{Low:R};{High:R}{(HighIn ? ']' : ')')}");
}
