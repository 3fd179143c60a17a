namespace HingeSelector.Words;

/// <summary>The value of one reading of one word.</summary>
/// <remarks>
/// A number may be known only within bounds: with one side measured, the worse side is at most that value.
/// Conditions stay exact: they hold when every value inside the bounds meets them, fail when none does, and are open otherwise.
/// </remarks>
/// <param name="State">Known or the reason why not.</param>
/// <param name="Low">Lowest possible value in base units (numbers only).</param>
/// <param name="High">Highest possible value in base units (numbers only).</param>
/// <param name="Bits">One bit per value of the closed list (choices and sets only).</param>
public readonly record struct FactValue(FactState State, double Low, double High, ulong Bits)
{
    /// <summary>Not measured.</summary>
    public static FactValue Missing => default;

    /// <summary>Not applicable.</summary>
    public static FactValue NotApplicable => new(FactState.NotApplicable, 0, 0, 0);

    /// <summary>Depends on something that is not known.</summary>
    public static FactValue Undecided => new(FactState.Undecided, 0, 0, 0);

    /// <summary>A known number in base units.</summary>
    public static FactValue Number(double value) => new(FactState.Known, value, value, 0);

    /// <summary>A number known only to lie between two bounds.</summary>
    public static FactValue Between(double low, double high) => new(FactState.Known, low, high, 0);

    /// <summary>A known choice or set.</summary>
    public static FactValue Of(ulong bits) => new(FactState.Known, 0, 0, bits);

    /// <summary>A known choice by its place in the closed list.</summary>
    public static FactValue Choice(int index) => Of(1UL << index);

    /// <summary>A known yes or no; yes-no words list no first.</summary>
    public static FactValue YesNo(bool yes) => Choice(yes ? 1 : 0);

    /// <summary>Unknown for a given reason.</summary>
    public static FactValue Unknown(FactState why) => new(why, 0, 0, 0);

    /// <summary>Whether there is a value, be it within bounds.</summary>
    public bool IsKnown => State == FactState.Known;

    /// <summary>Whether there is one exact number or a value of a list.</summary>
    public bool IsExact => State == FactState.Known && Low.Equals(High);
}
