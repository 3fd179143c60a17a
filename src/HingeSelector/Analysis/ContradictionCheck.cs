using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Analysis;

/// <summary>HS3104, HS3105 and HS3106: conclusions that another rule undoes on every screen on which they are drawn.</summary>
/// <remarks>
/// That two rules differ on some screen is what the policy of combination is for: points add up, the more cautious request wins, an
/// exclusion takes a variant out. It is a contradiction when one of the two can never stand.
/// </remarks>
internal static class ContradictionCheck
{
    /// <summary>Compares every conclusion with those that could undo it.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var asking = book.Living.Where(r => CheckedBook.RequestsOf(r).Any()).ToList();
        var removing = book.Living.Where(r => r.Conclusions.Any(c => c is ExclusionConclusion or StopConclusion)).ToList();
        var withholding = book.Living.Where(r => r.Conclusions.Any(c => c is WithholdConclusion)).ToList();
        foreach (var rule in book.Living)
        {
            CheckRequests(book, rule, asking, bag);
            CheckOut(book, rule, removing, bag);
            CheckCues(book, rule, withholding, bag);
        }
    }

    private static void CheckRequests(CheckedBook book, Rule rule, IReadOnlyList<Rule> asking, DiagnosticBag bag)
    {
        foreach (var request in CheckedBook.RequestsOf(rule))
        {
            foreach (var other in asking)
            {
                if (CheckedBook.RequestsOf(other).FirstOrDefault(r => Effects.Overrules(r, request)) is not { } stronger || !(other.Index == rule.Index || book.Implies(rule, other)))
                    continue;
                bag.Add(Shown(Problems.AlwaysOverruled(rule.Span, rule.Id, Effects.Text(request), other.Id, Effects.Text(stronger), other.Span), book, rule));
                break;
            }
        }
    }

    private static void CheckOut(CheckedBook book, Rule rule, IReadOnlyList<Rule> removing, DiagnosticBag bag)
    {
        var what = rule.Conclusions.OfType<PointsConclusion>().Any() ? "points" : rule.PerCandidate && CheckedBook.RequestsOf(rule).Any() ? "requests" : null;
        if (what is null)
            return;
        if (removing.FirstOrDefault(other => TakesOut(other, rule) && (other.Index == rule.Index || book.Implies(rule, other))) is { } remover)
            bag.Add(Shown(Problems.CountsForNobody(rule.Span, rule.Id, what, remover.Id, remover.Span), book, rule));
    }

    /// <summary>Whether nothing is left of the variants of a rule where another one fires.</summary>
    private static bool TakesOut(Rule other, Rule rule) => other.Conclusions.Any(c => c switch
    {
        ExclusionConclusion => true,
        StopConclusion { Level: StopLevel.Today } stop => (stop.Allowed & rule.Variants) == 0,
        StopConclusion => true,
        _ => false,
    });

    private static void CheckCues(CheckedBook book, Rule rule, IReadOnlyList<Rule> withholding, DiagnosticBag bag)
    {
        foreach (var cue in rule.Conclusions.OfType<CueConclusion>())
        {
            foreach (var other in withholding)
            {
                var ask = other.Conclusions.OfType<WithholdConclusion>().SelectMany(w => w.Asks).FirstOrDefault(cue.Asks.Contains);
                if (ask is null || !(other.Index == rule.Index || book.Implies(rule, other)))
                    continue;
                bag.Add(Shown(Problems.AlwaysWithheld(rule.Span, rule.Id, ask, other.Id, other.Span), book, rule));
                break;
            }
        }
    }

    private static Diagnostic Shown(Diagnostic diagnostic, CheckedBook book, Rule rule)
        => diagnostic with { Witness = WitnessText.Of(book.WitnessOf(rule), book.Book.Variants, rule.PerCandidate) };
}
