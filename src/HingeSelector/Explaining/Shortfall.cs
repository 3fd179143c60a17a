using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>How far a condition is from turning out the other way.</summary>
/// <param name="Condition">The condition, as written.</param>
/// <param name="Label">What it reads, for people.</param>
/// <param name="Word">The word that it reads; null for a finding.</param>
/// <param name="Now">The value that it read.</param>
/// <param name="Needed">The value at which it turns; null where there is no number.</param>
/// <param name="Distance">Distance in base units; null where there is no number, or where no other value is to be proposed.</param>
/// <param name="InErrors">Distance in standard errors; null where no error is stated.</param>
public sealed record Shortfall(Condition Condition, string Label, Word? Word, string Now, double? Needed, double? Distance, double? InErrors)
{
    /// <summary>The number that it read, in base units; null where there is none.</summary>
    public double? Value { get; init; }

    /// <summary>Orders by nearness: in errors first, then other numbers, then answers.</summary>
    internal double Nearness => InErrors ?? (Distance is null ? double.PositiveInfinity : double.MaxValue);
}
