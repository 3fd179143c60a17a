using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Editing;

/// <summary>Picks rules by topic, by what they rest on, by variant and by grade.</summary>
public static class RuleLister
{
    /// <summary>The rules that are wanted, in order of id.</summary>
    public static IReadOnlyList<ListedRule> List(RuleBook book, RuleFilter filter)
    {
        var about = filter.About is { } name ? RestingOn(book, name) : null;
        return [.. book.Rules.Where(r => Matches(r, filter) && (about is null || about.ContainsKey(r.Index))).Select(r => new ListedRule(r, about?[r.Index]))];
    }

    /// <summary>Ids that <see cref="RuleFilter.About"/> may name.</summary>
    public static IReadOnlyCollection<string> Names(RuleBook book) => [.. book.Vocabulary.Ids, .. book.Findings.Select(f => f.Id)];

    private static bool Matches(Rule rule, RuleFilter filter)
        => (filter.Topic is null || rule.Topic == filter.Topic)
        && (filter.Grade is null || rule.Grade == filter.Grade)
        && (filter.Variant is not { } variant || (rule.PerCandidate && (rule.Variants & (1UL << variant)) != 0));

    // Rules that read the word or the finding itself, then those that read a finding which rests on it, step by step.
    private static Dictionary<int, Finding?> RestingOn(RuleBook book, string name)
    {
        var found = new Dictionary<int, Finding?>();
        var open = new Queue<Finding>();
        foreach (var rule in book.Rules.Where(r => ReadsOrGives(book, r, name)))
        {
            found.Add(rule.Index, null);
            foreach (var given in Given(book, rule))
                open.Enqueue(given);
        }
        var seen = new HashSet<int>();
        while (open.TryDequeue(out var finding))
        {
            if (!seen.Add(finding.Index))
                continue;
            foreach (var rule in book.Rules.Where(r => Reads(r, finding.Index) && found.TryAdd(r.Index, finding)))
            {
                foreach (var given in Given(book, rule))
                    open.Enqueue(given);
            }
        }
        return found;
    }

    private static bool ReadsOrGives(RuleBook book, Rule rule, string name)
        => rule.Conditions.Any(c => c.Reads.Any(r => r.Word.Id == name) || c.Findings.Any(f => book.Findings[f.Finding].Id == name))
        || Given(book, rule).Any(f => f.Id == name);

    /// <summary>Whether a rule reads a finding itself.</summary>
    public static bool Reads(Rule rule, int finding) => rule.Conditions.Any(c => c.Findings.Any(f => f.Finding == finding));

    /// <summary>Findings that a rule gives.</summary>
    public static IEnumerable<Finding> Given(RuleBook book, Rule rule) => rule.Conclusions.OfType<FindingConclusion>().Select(c => book.Findings[c.Finding]);
}
