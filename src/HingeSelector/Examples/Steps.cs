using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>The resolution of facts: the smallest difference that is written down.</summary>
public static class Steps
{
    // More decimals than any unit has; takes away what binary arithmetic adds.
    private const int Decimals = 9;

    /// <summary>One step of a word, in base units: one in the last decimal of its unit, 1 for a count.</summary>
    public static double Of(Word word) => word.Unit is { } unit ? Math.Round(Math.Pow(10, -unit.Decimals) * unit.Factor, Decimals) : 1;

    /// <summary>A value some steps further.</summary>
    public static double Move(Word word, double value, int steps) => Math.Round(value + (steps * Of(word)), Decimals);
}
