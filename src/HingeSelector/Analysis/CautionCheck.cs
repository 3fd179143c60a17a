using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>HS3118 and HS3119: rules that ask for more, or speak for something after an injury, without a word of caution.</summary>
internal static class CautionCheck
{
    /// <summary>Looks at every rule that can fire.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var cautions = book.Living.Where(r => r.Conclusions.Any(c => c is CautionConclusion)).ToList();
        var histories = book.Book.Vocabulary.Words.Where(w => w is { NamedStays: true, Kind: Words.WordKind.Set }).ToList();
        foreach (var rule in book.Living)
        {
            if (CheckedBook.RequestsOf(rule).FirstOrDefault(Effects.Raises) is { } raising && !CheckedBook.RequestsOf(rule).Any(Effects.Lightens)
                && Bare(book, rule, [], Related(book, rule, cautions)) is { } bare)
            {
                bag.Add(Problems.RaisesWithoutCaution(rule.Span, rule.Id, Effects.Text(raising)) with { Witness = Text(book, rule, bare) });
            }
            foreach (var history in histories.Where(h => SpeaksFor(rule) && book.Facts.Of(rule).Contains(h.Id)))
            {
                if (Bare(book, rule, [new Goal(book.Space.HasSome(history), Need.True)], [.. cautions.Where(c => book.Facts.Of(c).Contains(history.Id))]) is { } untold)
                    bag.Add(Problems.HistoryWithoutCaution(rule.Span, rule.Id) with { Witness = Text(book, rule, untold) });
            }
        }
    }

    private static bool SpeaksFor(Rule rule)
        => rule.Conclusions.Any(c => c is PointsConclusion { Amount: > 0 }) || CheckedBook.RequestsOf(rule).Any(Effects.Raises);

    // A caution that has nothing to do with what the rule rests on is no caution about it.
    private static List<Rule> Related(CheckedBook book, Rule rule, IReadOnlyList<Rule> cautions)
        => [.. cautions.Where(c => c.Index == rule.Index || book.Facts.Of(c).Overlaps(book.Facts.Of(rule)))];

    /// <summary>A screen on which the rule fires and none of the cautions does; null when there is none.</summary>
    private static Witness? Bare(CheckedBook book, Rule rule, IEnumerable<Goal> also, IReadOnlyList<Rule> cautions)
        => book.Solver.Find([new Goal(book.Space.Of(rule), Need.True), .. also, .. cautions.Select(c => new Goal(book.Space.Of(c), Need.NotTrue))]);

    private static string Text(CheckedBook book, Rule rule, Witness witness) => WitnessText.Of(witness, book.Book.Variants, rule.PerCandidate);
}
