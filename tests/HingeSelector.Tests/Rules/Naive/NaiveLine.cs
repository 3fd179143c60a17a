using System.Globalization;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>Reads what must hold for one word, straight from the author's text.</summary>
/// <remarks>Shares nothing with the reader of the product but the words and the units.</remarks>
internal static class NaiveLine
{
    /// <summary>The test that a text asks of a value that is known.</summary>
    public static Func<FactValue, Answer> Read(Word word, string text) => word.Kind switch
    {
        WordKind.Number => ReadNumber(word, text),
        WordKind.Choice when text.StartsWith("is not ", StringComparison.Ordinal) => Lacks(Mask(word, text[7..])),
        WordKind.Choice when text.StartsWith("is ", StringComparison.Ordinal) => Has(Mask(word, text[3..])),
        WordKind.Set when text == "is empty" => v => v.Bits == 0 ? Answer.Yes : Answer.No,
        WordKind.Set when text == "is not empty" => v => v.Bits == 0 ? Answer.No : Answer.Yes,
        WordKind.Set when text.StartsWith("includes ", StringComparison.Ordinal) => Has(Mask(word, text[9..])),
        WordKind.Set when text.StartsWith("does not include ", StringComparison.Ordinal) => Lacks(Mask(word, text[17..])),
        _ => throw new FormatException($"{word.Id}: {text}"),
    };

    private static Func<FactValue, Answer> Has(ulong mask) => v => (v.Bits & mask) != 0 ? Answer.Yes : Answer.No;

    private static Func<FactValue, Answer> Lacks(ulong mask) => v => (v.Bits & mask) == 0 ? Answer.Yes : Answer.No;

    private static ulong Mask(Word word, string names)
    {
        var mask = 0UL;
        foreach (var name in names.Split(" or "))
        {
            var meant = 0UL;
            // A value with sides may stand in the answer bare, with left or with right behind it.
            for (var i = 0; i < word.Values.Count; i++)
                meant |= word.Values[i] == name.Trim() || word.Values[i] == $"{name.Trim()} left" || word.Values[i] == $"{name.Trim()} right" ? 1UL << i : 0;
            mask |= meant == 0 ? throw new FormatException($"{word.Id}: {name}") : meant;
        }
        return mask;
    }

    private static Func<FactValue, Answer> ReadNumber(Word word, string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        var first = text[..space];
        var rest = text[(space + 1)..];
        if (first is "from" or "between")
        {
            var ends = rest.Split(first == "from" ? " to " : " and ");
            var (a, b) = (Number(word, WithUnitOf(ends[0], ends[1])), Number(word, ends[1]));
            return first == "from"
                ? v => v.High < a || v.Low > b ? Answer.No : v.Low >= a && v.High <= b ? Answer.Yes : Answer.Unsure
                : v => v.High < a || v.Low >= b ? Answer.No : v.Low >= a && v.High < b ? Answer.Yes : Answer.Unsure;
        }
        if (first == "at")
        {
            var second = rest.Split(' ')[0];
            var end = Number(word, rest[(second.Length + 1)..]);
            return second == "most"
                ? v => v.High <= end ? Answer.Yes : v.Low > end ? Answer.No : Answer.Unsure
                : v => v.Low >= end ? Answer.Yes : v.High < end ? Answer.No : Answer.Unsure;
        }
        var number = Number(word, rest);
        return first switch
        {
            "below" => v => v.High < number ? Answer.Yes : v.Low >= number ? Answer.No : Answer.Unsure,
            "above" => v => v.Low > number ? Answer.Yes : v.High <= number ? Answer.No : Answer.Unsure,
            "exactly" => v => v.Low > number || v.High < number ? Answer.No : v.Low >= v.High ? Answer.Yes : Answer.Unsure,
            _ => throw new FormatException($"{word.Id}: {text}"),
        };
    }

    // "from 50 to 65 deg" leaves the first unit out.
    private static string WithUnitOf(string bare, string full)
    {
        if (!double.TryParse(bare, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
            return bare;
        var digits = full.TakeWhile(c => char.IsDigit(c) || c is '.' or ',' or '-' or '+' or ' ').Count();
        return $"{bare} {full[digits..]}";
    }

    private static double Number(Word word, string text)
        => QuantityText.TryRead(text, word.Dimension, null, out var value, out var problem) ? value : throw new FormatException($"{word.Id}: {problem}");
}
