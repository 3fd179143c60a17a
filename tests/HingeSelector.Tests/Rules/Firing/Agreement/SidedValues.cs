using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>Derives the readings of a word with two sides from the two sides.</summary>
internal static class SidedValues
{
    public static void Fill(FactValue[] table, Word word, int? throwingSide)
    {
        var left = table[word.Slot + Sides.Left];
        var right = table[word.Slot + Sides.Right];
        var (low, high) = (Ordered(left, right, Math.Min), Ordered(left, right, Math.Max));
        var worseIsHigh = word.Worse == WorseEnd.Higher;
        table[word.Slot + Sides.Worse] = worseIsHigh ? high : low;
        table[word.Slot + Sides.Better] = worseIsHigh ? low : high;
        table[word.Slot + Sides.Throwing] = throwingSide is { } side ? (side == 0 ? left : right) : Either(left, right);
        table[word.Slot + Sides.Other] = throwingSide is { } one ? (one == 0 ? right : left) : Either(left, right);
        table[word.Slot + Sides.Gap] = left.IsKnown && right.IsKnown ? FactValue.Number(Math.Abs(left.Low - right.Low)) : Unknown(left, right);
    }

    // One side alone bounds the lower and the higher of the two.
    private static FactValue Ordered(FactValue left, FactValue right, Func<double, double, double> pick)
    {
        if (left.IsKnown && right.IsKnown)
            return FactValue.Number(pick(left.Low, right.Low));
        if (!left.IsKnown && !right.IsKnown)
            return Unknown(left, right);
        var one = left.IsKnown ? left.Low : right.Low;
        return pick(0, 1) < 1 ? FactValue.Between(double.NegativeInfinity, one) : FactValue.Between(one, double.PositiveInfinity);
    }

    private static FactValue Either(FactValue left, FactValue right)
        => left.IsKnown && right.IsKnown ? FactValue.Between(Math.Min(left.Low, right.Low), Math.Max(left.Low, right.Low)) : Unknown(left, right);

    private static FactValue Unknown(FactValue left, FactValue right) => left.IsKnown ? right : left;
}
