using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Comparing;

/// <summary>Lists the stops and holds that the second rules no longer give, for the roster and in the rules themselves.</summary>
internal static class GoneSafeties
{
    /// <summary>All of them, those of most athletes first.</summary>
    public static IReadOnlyList<GoneSafety> Of(RuleBook from, RuleBook to, IReadOnlyList<AthleteChange> changes, IReadOnlySet<string> acknowledged)
    {
        var after = to.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
        var ofAthletes = changes.SelectMany(c => c.StopsGone.Select(s => (s.Rule, c.Athlete))).ToLookup(p => p.Rule, p => p.Athlete, StringComparer.Ordinal);
        var gone = new List<GoneSafety>();
        // A roster may have nobody whom a stop concerns, so stops are compared in the rules as well.
        foreach (var rule in from.Rules.Where(r => r.Conclusions.Any(c => c is StopConclusion)))
        {
            var what = InTheRules(rule, after.GetValueOrDefault(rule.Id), from, to) ?? (ofAthletes.Contains(rule.Id) ? "no longer holds for the athletes named here" : null);
            if (what is not null)
                gone.Add(new GoneSafety(rule.Id, what, [.. ofAthletes[rule.Id].Distinct(StringComparer.Ordinal)], acknowledged.Contains(rule.Id), rule.Span));
        }
        foreach (var held in changes.SelectMany(c => c.HoldsGone.Select(h => (Hold: h, c.Athlete))).GroupBy(p => p.Hold, StringComparer.Ordinal))
            gone.Add(new GoneSafety(held.Key, "no longer holds athletes who have not answered it", [.. held.Select(h => h.Athlete)], acknowledged.Contains(held.Key), SourceSpan.None));
        return [.. gone.OrderBy(g => g.Acknowledged).ThenByDescending(g => g.Athletes.Count).ThenBy(g => g.Id, StringComparer.Ordinal)];
    }

    private static string? InTheRules(Rule before, Rule? after, RuleBook from, RuleBook to)
    {
        if (after is null)
            return "the rule is gone";
        foreach (var stop in before.Conclusions.OfType<StopConclusion>().Select(s => Picture.Stop(before.Id, s, from)))
        {
            var others = after.Conclusions.OfType<StopConclusion>().Select(s => Picture.Stop(after.Id, s, to)).ToList();
            if (others.Count == 0)
                return "the rule gives no stop any more";
            if (others.TrueForAll(stop.IsStricterThan))
                return others[0].Level < stop.Level ? $"the stop is weaker: {Name(others[0].Level)} instead of {Name(stop.Level)}" : "the stop allows more than before";
        }
        return null;
    }

    private static string Name(StopLevel level) => level.ToString().ToLowerInvariant();
}
