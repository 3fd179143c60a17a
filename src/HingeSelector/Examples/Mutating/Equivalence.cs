using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Examples.Mutating;

/// <summary>Decides exactly whether a mutant asks the same as its rule wherever facts can lie.</summary>
/// <remarks>
/// Numbers lie inside the range of their word, variants are those of the catalogue. Facts are taken to be free of each other:
/// what only their connection makes impossible still counts as a mutant to be killed.
/// </remarks>
internal static class Equivalence
{
    /// <summary>Whether no variant and no number inside the ranges tells them apart.</summary>
    public static bool IsPlain(Mutant mutant)
        => mutant.Rule.Variants == mutant.Changed.Variants && SameConditions(mutant.Rule.OpenConditions, mutant.Changed.OpenConditions);

    /// <summary>Whether trying every combination of the values that matter shows no difference; false also where there are too many to try.</summary>
    public static bool IsProven(RuleBook book, Mutant mutant) => new EveryValue(book, mutant).ShowsNoDifference();

    private static bool SameConditions(IReadOnlyList<Condition> a, IReadOnlyList<Condition> b)
        => a.Count == b.Count && a.Zip(b).All(p => ReferenceEquals(p.First, p.Second) || Key(p.First) == Key(p.Second));

    /// <summary>The question of a condition with every interval cut to the range of its word.</summary>
    private static string Key(Condition condition) => condition switch
    {
        NumberCondition number => $"{number.Reading} in {Cut(number)}",
        _ when ConditionLine.Parts(condition) is { } parts => $"{condition.GetType().Name}({string.Join(" | ", parts.Select(Key))})",
        _ => condition.Key,
    };

    private static Interval Cut(NumberCondition number) => number.Interval.Intersect(RangeOf(number.Reading));

    /// <summary>Where the numbers of a reading can lie.</summary>
    public static Interval RangeOf(WordReading reading)
    {
        var word = reading.Word;
        if (reading.Name == Sides.Names[Sides.Gap])
            return word.Range is { } spread ? new Interval(0, true, Math.Round(spread.High - spread.Low, 9), true) : Interval.Above(0, true);
        if (word.Range is { } range)
            return new Interval(range.Low, true, range.High, true);
        // What is counted in the room is never below none.
        return word.About == WordAbout.Room ? Interval.Above(0, true) : new Interval(double.NegativeInfinity, false, double.PositiveInfinity, false);
    }
}
