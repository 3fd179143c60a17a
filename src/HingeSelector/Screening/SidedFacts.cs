using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>The readings of a word with two sides: left, right, worse, better, throwing, other, gap.</summary>
/// <remarks>
/// With one side known, the worse side is at most (or, where high is worse, at least) that value: it stays a fact within
/// bounds. A side that does not apply falls out and the other side speaks for both.
/// </remarks>
internal static class SidedFacts
{
    /// <summary>Fills the readings.</summary>
    /// <param name="word">The word.</param>
    /// <param name="left">Left side as it counts on the day.</param>
    /// <param name="right">Right side as it counts on the day.</param>
    /// <param name="throwing">The answer to the throwing side.</param>
    /// <param name="slots">Slots of the word.</param>
    public static void Fill(Word word, FactValue left, FactValue right, FactValue throwing, Span<FactValue> slots)
    {
        slots[Sides.Left] = left;
        slots[Sides.Right] = right;
        (slots[Sides.Worse], slots[Sides.Better]) = WorseAndBetter(word, left, right);
        (slots[Sides.Throwing], slots[Sides.Other]) = ThrowingAndOther(left, right, throwing);
        slots[Sides.Gap] = Gap(word, left, right);
    }

    /// <summary>Fills the readings of a word that nobody answered; they are not measured, as every slot is at the beginning.</summary>
    /// <param name="word">The word, with or without sides.</param>
    /// <param name="throwing">The answer to the throwing side.</param>
    /// <param name="slots">Slots of the word.</param>
    public static void FillUnanswered(Word word, FactValue throwing, Span<FactValue> slots)
    {
        if (word.Sided)
            (slots[Sides.Throwing], slots[Sides.Other]) = ThrowingAndOther(FactValue.Missing, FactValue.Missing, throwing);
    }

    /// <summary>Fills the readings of a set whose values have sides: all of it, left, right, throwing, other.</summary>
    public static void Fill(ValueSides sides, FactValue all, FactValue throwing, Span<FactValue> slots)
    {
        var left = all.IsKnown ? FactValue.Of(sides.On(all.Bits, Sides.Left)) : all;
        var right = all.IsKnown ? FactValue.Of(sides.On(all.Bits, Sides.Right)) : all;
        (slots[0], slots[1], slots[2]) = (all, left, right);
        // What is the same on both sides does not wait for the throwing side.
        (slots[3], slots[4]) = left == right && throwing.State != FactState.NotApplicable ? (left, right) : ThrowingAndOther(left, right, throwing);
    }

    private static (FactValue Worse, FactValue Better) WorseAndBetter(Word word, FactValue left, FactValue right)
    {
        if (left.State == FactState.NotApplicable)
            return (right, right);
        if (right.State == FactState.NotApplicable)
            return (left, left);
        if (!left.IsKnown && !right.IsKnown)
        {
            var unknown = FactValue.Unknown(Reason(left.State, right.State));
            return (unknown, unknown);
        }
        if (word.Kind != WordKind.Number)
            return left == right ? (left, left) : (FactValue.Undecided, FactValue.Undecided);

        // Where the vocabulary names no worse end, the lower one is taken.
        var (lower, higher) = LowerAndHigher(left, right);
        return word.Worse == WorseEnd.Higher ? (higher, lower) : (lower, higher);
    }

    // A side may be known only within bounds, or not at all; then the lower and the higher of the two have bounds as well.
    private static (FactValue Lower, FactValue Higher) LowerAndHigher(FactValue left, FactValue right)
    {
        var (l, r) = (Bounds(left), Bounds(right));
        return (FactValue.Between(Math.Min(l.Low, r.Low), Math.Min(l.High, r.High)), FactValue.Between(Math.Max(l.Low, r.Low), Math.Max(l.High, r.High)));
    }

    private static (double Low, double High) Bounds(FactValue value) => value.IsKnown ? (value.Low, value.High) : (double.NegativeInfinity, double.PositiveInfinity);

    private static (FactValue Throwing, FactValue Other) ThrowingAndOther(FactValue left, FactValue right, FactValue throwing)
    {
        if (throwing.State == FactState.NotApplicable)
            return (FactValue.NotApplicable, FactValue.NotApplicable);
        if (!throwing.IsKnown)
            return (FactValue.Undecided, FactValue.Undecided);
        return throwing == FactValue.Choice(Sides.Left) ? (left, right) : (right, left);
    }

    private static FactValue Gap(Word word, FactValue left, FactValue right)
    {
        if (left.State == FactState.NotApplicable || right.State == FactState.NotApplicable)
            return FactValue.NotApplicable;
        if (!left.IsKnown || !right.IsKnown)
            return FactValue.Unknown(left.IsKnown ? right.State : right.IsKnown ? left.State : Reason(left.State, right.State));
        if (!left.IsExact || !right.IsExact)
            return FactValue.Undecided;
        return word.Kind == WordKind.Number ? FactValue.Number(Math.Round(Math.Abs(left.Low - right.Low), 9)) : FactValue.Undecided;
    }

    /// <summary>Of two reasons the one that can be mended first: measure again, then measure at all, then leave a refusal alone.</summary>
    private static FactState Reason(FactState left, FactState right)
    {
        foreach (var reason in new[] { FactState.Expired, FactState.NotMeasured, FactState.Refused })
        {
            if (left == reason || right == reason)
                return reason;
        }
        return FactState.Undecided;
    }
}
