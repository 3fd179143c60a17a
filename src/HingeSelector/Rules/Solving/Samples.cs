using HingeSelector.Quantities;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>Answers to one word that stand for all others: a condition cannot tell any other answer from one of these.</summary>
/// <remarks>Between two numbers that occur in rules nothing changes, so each such number and one number between two of them are enough.</remarks>
internal static class Samples
{
    /// <summary>Numbers of a word at which one of some conditions changes, within what the reader accepts.</summary>
    public static IReadOnlyList<double> Ends(Word word, IEnumerable<Condition> conditions, bool gap)
        => [.. conditions.OfType<NumberCondition>()
            .Where(c => c.Reading.Word.Id == word.Id && (c.Reading.Name == Sides.Names[Sides.Gap]) == gap)
            .SelectMany(c => new[] { c.Interval.Low, c.Interval.High })
            .Where(double.IsFinite)
            .Distinct().Order()];

    /// <summary>Answers that stand for all: not known first, then values from the middle of the range outwards, not applicable last.</summary>
    /// <param name="word">The word.</param>
    /// <param name="ends">Numbers at which something changes.</param>
    public static IReadOnlyList<FactValue> Of(Word word, IReadOnlyList<double> ends)
    {
        var answers = new List<FactValue> { FactValue.Missing };
        answers.AddRange(word.Kind == WordKind.Number
            ? Numbers(word, ends).Select(FactValue.Number)
            : Enumerable.Range(0, word.Values.Count).Select(FactValue.Choice));
        if (word.IsMeasured || word.MayNotApply)
            answers.Add(FactValue.NotApplicable);
        return answers;
    }

    /// <summary>Each end, and one number on either side of it.</summary>
    private static IEnumerable<double> Numbers(Word word, IReadOnlyList<double> ends)
    {
        var whole = word.Dimension == Dimension.None;
        var (low, high) = word.Range ?? (whole ? 0 : double.NegativeInfinity, double.PositiveInfinity);
        var inside = ends.Select(e => Math.Round(e, 9)).Where(e => e >= low && e <= high && (!whole || double.IsInteger(e))).Distinct().Order().ToList();
        var edges = inside.Prepend(low).Append(high).ToList();
        var between = edges.Zip(edges.Skip(1)).Select(e => Between(e.First, e.Second, word, whole)).OfType<double>();
        // A rating is low on a plain day; of everything else the middle is plain.
        var middle = word.Dimension == Dimension.Rating ? low : word.Usual is { } usual ? (usual.Low + usual.High) / 2 : word.Range is { } range ? (range.Low + range.High) / 2 : 0;
        return inside.Concat(between).Distinct().OrderBy(v => Math.Abs(v - middle));
    }

    /// <summary>A number that lies between two others and reads well in the word's unit; null when none does.</summary>
    private static double? Between(double low, double high, Word word, bool whole)
    {
        var unit = word.Unit?.Factor ?? 1;
        if (!double.IsFinite(low) && !double.IsFinite(high))
            return 0;
        if (!double.IsFinite(low))
            return Math.Round(high - (10 * unit), 9);
        if (!double.IsFinite(high))
            return Math.Round(low + (whole ? 1 : 10 * unit), 9);
        if (whole)
            return Math.Floor(low) + 1 < high || (Math.Floor(low) + 1).Equals(high) && word.Range?.High.Equals(high) == true ? Math.Floor(low) + 1 : null;
        // No pain is the plain answer, and stands for all below the first number of a rule.
        if (word.Dimension == Dimension.Rating && low.Equals(word.Range?.Low))
            return low;
        for (var decimals = 0; decimals <= 6; decimals++)
        {
            var nice = Math.Round(Math.Round((low + high) / 2 / unit, decimals) * unit, 9);
            if (nice > low && nice < high)
                return nice;
        }
        return high > low ? (low + high) / 2 : null;
    }
}
