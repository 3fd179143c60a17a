using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>HS3107 and HS3108: screens that leave nothing, or nothing with a load, although nothing stops the athlete.</summary>
/// <remarks>The solver finds the screen; a whole answer for it confirms that nothing else comes in between.</remarks>
internal static class GapCheck
{
    /// <summary>Looks for both.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var gaps = new Gaps(book);
        var at = book.Book.Variants[0].Span;
        if (gaps.NothingLeft() is { } nothing && Confirmed(book, nothing, r => r.Ranked.Count == 0) is { } how)
            bag.Add(Problems.NothingLeft(at, how) with { Witness = Text(nothing) });
        else if (gaps.OnlyDrillsLeft() is { } drills && Confirmed(book, drills, r => r.Ranked.Count > 0 && r.Ranked.All(c => gaps.Drills.Contains(c.Candidate.Variant))) is { } how2)
            bag.Add(Problems.OnlyDrillsLeft(at, string.Join(" or ", gaps.Drills.Select(d => $"'{d.Id}'")), how2) with { Witness = Text(drills) });

        string Text(Witness witness) => WitnessText.Of(witness, book.Book.Variants, false).Replace("\n  expect: fires", "", StringComparison.Ordinal);
    }

    /// <summary>How sure it is; null when the whole answer to this very screen comes out otherwise.</summary>
    private static string? Confirmed(CheckedBook book, Witness witness, Func<Recommendation, bool> asFound)
    {
        if (WholeAnswer.For(book.Book, witness) is not { } answer)
            return "found on the conditions; the screen gives words that are worked out, so no whole answer was made";
        return answer.Outcome is Outcome.Ranked or Outcome.LimitedToday && asFound(answer) ? "found on the conditions and confirmed by a whole answer" : null;
    }
}
