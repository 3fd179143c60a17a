using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>HS3103: rules that fire only where another one fires that concludes all that they do.</summary>
internal static class AddsNothingCheck
{
    /// <summary>Compares every rule with those that conclude the same.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var effects = book.Living.ToDictionary(r => r.Index, Effects.Of);
        var byEffect = book.Living.SelectMany(r => effects[r.Index].Distinct().Select(e => (Effect: e, Rule: r))).ToLookup(p => p.Effect, p => p.Rule, StringComparer.Ordinal);
        foreach (var rule in book.Living)
        {
            if (byEffect[effects[rule.Index][0]].FirstOrDefault(other => Covers(other, rule, effects, book)) is { } cover)
            {
                bag.Add(Problems.AddsNothing(rule.Span, rule.Id, cover.Id, cover.Span, book.Implies(cover, rule)) with
                {
                    Witness = WitnessText.Of(book.WitnessOf(rule), book.Book.Variants, rule.PerCandidate),
                    Edit = RuleText.Removal(rule),
                });
            }
        }
    }

    private static bool Covers(Rule other, Rule rule, Dictionary<int, IReadOnlyList<string>> effects, CheckedBook book)
    {
        if (other.Index == rule.Index || effects[rule.Index].Except(effects[other.Index]).Any() || !book.Implies(rule, other))
            return false;
        // Of two that fire together and conclude the same, the first one stays.
        var twins = !effects[other.Index].Except(effects[rule.Index]).Any() && book.Implies(other, rule);
        return !twins || Comes(other).CompareTo(Comes(rule)) < 0;
    }

    private static (string, int) Comes(Rule rule) => (rule.Span.Source?.Path ?? "", rule.Span.Line);
}
