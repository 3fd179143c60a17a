using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>HS3107 and HS3108: screens that leave nothing, or nothing with a load, although nothing stops the athlete.</summary>
/// <remarks>
/// The solver finds the screen or proves that there is none; a whole answer for it confirms that nothing else comes in between, and
/// what the answer does not need is taken out of the screen again.
/// </remarks>
internal static class GapCheck
{
    private const string OnConditions = "found on the conditions; the vocabulary is too small for a whole answer";
    private const string Confirmed = "found on the conditions and confirmed by a whole answer";

    /// <summary>Looks for both.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var gaps = new Gaps(book);
        var at = book.Book.Variants[0].Span;
        if (Shown(book, gaps.NothingLeft(), r => r.Ranked.Count == 0) is { } nothing)
            bag.Add(Problems.NothingLeft(at, nothing.How) with { Witness = WitnessText.Given(nothing.Screen) });
        if (Shown(book, gaps.OnlyDrillsLeft(), r => r.Ranked.Count > 0 && r.Ranked.All(c => gaps.Drills.Contains(c.Candidate.Variant))) is { } drills)
            bag.Add(Problems.OnlyDrillsLeft(at, string.Join(" or ", gaps.Drills.Select(d => $"'{d.Id}'")), drills.How) with { Witness = WitnessText.Given(drills.Screen) });
    }

    /// <summary>The screen with how sure it is; null without a screen, and when the whole answer comes out otherwise.</summary>
    private static (IReadOnlyList<GivenWord> Screen, string How)? Shown(CheckedBook book, Witness? witness, Func<Recommendation, bool> asFound)
    {
        if (witness is null)
            return null;
        if (WholeAnswer.For(book.Book, witness.Given) is not { } answer)
            return (witness.Given, OnConditions);
        if (!IsAsFound(answer))
            return null;
        // Most of it is plain, such as no pain; that goes in one piece.
        var screen = witness.Given.Where(g => !WholeAnswer.IsPlain(g)).ToList();
        if (!IsAsFound(WholeAnswer.For(book.Book, screen)!))
            screen = [.. witness.Given];
        foreach (var given in screen.ToList())
        {
            var without = screen.Where(g => g != given).ToList();
            if (IsAsFound(WholeAnswer.For(book.Book, without)!))
                screen = without;
        }
        return (screen, Confirmed);

        bool IsAsFound(Recommendation r) => r.Outcome is Outcome.Ranked or Outcome.LimitedToday && asFound(r);
    }
}
