using HingeSelector.Rules;

namespace HingeSelector.Examples.Covering;

/// <summary>What the examples of some rules show, and what they do not.</summary>
/// <param name="Items">Everything that should be shown.</param>
/// <param name="Missing">What no example shows.</param>
public sealed record CoverageReport(IReadOnlyList<CoverageItem> Items, IReadOnlyList<CoverageItem> Missing)
{
    /// <summary>Share that is shown, %; 100 when there is nothing to show.</summary>
    public double Percent => Items.Count == 0 ? 100 : 100.0 * (Items.Count - Missing.Count) / Items.Count;

    /// <summary>Looks at the examples of some rules.</summary>
    /// <param name="book">The rule book.</param>
    /// <param name="rules">The rules with their examples.</param>
    public static CoverageReport Of(RuleBook book, IEnumerable<RuleCases> rules)
    {
        var needs = new CoverageNeeds(book);
        var items = new List<CoverageItem>();
        var missing = new List<CoverageItem>();
        foreach (var rule in rules)
        {
            var all = needs.Of(rule.Rule);
            items.AddRange(all);
            missing.AddRange(all.Where(i => !rule.Cases.Any(i.IsShownBy)));
        }
        return new CoverageReport(items, missing);
    }
}
