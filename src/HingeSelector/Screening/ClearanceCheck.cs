using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Warns of letters that open nothing because the history does not name what they are for.</summary>
internal static class ClearanceCheck
{
    /// <summary>Looks at each letter beside the history.</summary>
    /// <param name="clearances">The letters.</param>
    /// <param name="history">The answer to the history; null when nobody has asked.</param>
    /// <param name="word">The word of the history.</param>
    /// <param name="bag">Collects the warnings.</param>
    public static void Check(IReadOnlyList<Clearance> clearances, Answer? history, Word? word, DiagnosticBag bag)
    {
        if (word is null || history is not { Value.IsKnown: true })
            return;
        var onFile = word.Values.Where((_, i) => (history.Value.Bits & (1UL << i)) != 0).ToHashSet(StringComparer.Ordinal);
        foreach (var clearance in clearances)
        {
            foreach (var item in clearance.For.Where(i => !onFile.Contains(i)))
            {
                var plain = PlainOf(word, item);
                bag.Add(plain != item && onFile.Contains(plain)
                    ? Problems.HistoryWithoutSide(history.Span, plain, item)
                    : Problems.LetterForNothing(clearance.Span, item));
            }
        }
    }

    private static string PlainOf(Word word, string item)
        => word.ValueSides is { } sides ? sides.Plain[sides.PlainOf(sides.Typed.ToList().IndexOf(item))] : item;
}
