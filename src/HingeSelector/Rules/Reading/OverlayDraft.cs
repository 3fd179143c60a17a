using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rules.Reading;

/// <summary>Gathers what a philosophy does to rules and puts the rules under it together.</summary>
internal sealed class OverlayDraft(RuleBook book, Philosophy philosophy, DiagnosticBag bag)
{
    private readonly Dictionary<string, SourceSpan> _claimed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Rule> _changed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Rule> _off = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Rule> _added = new(StringComparer.Ordinal);
    private readonly List<RuleChange> _changes = [];

    /// <summary>Whether this is the first entry about a rule.</summary>
    public bool Claim(string rule, SourceSpan at)
    {
        if (_claimed.TryAdd(rule, at))
            return true;
        bag.Add(Problems.ChangedTwice(at, rule, _claimed[rule]));
        return false;
    }

    public void Change(Rule rule)
    {
        _changed[rule.Id] = rule;
        _changes.Add(rule.Change!);
    }

    public void SwitchOff(Rule rule, RuleChange change)
    {
        _off[rule.Id] = rule;
        _changes.Add(change);
    }

    public void Add(Rule rule)
    {
        if (!_added.TryAdd(rule.Id, rule))
            bag.Add(Problems.DuplicateId(rule.Span, "rule", rule.Id, _added[rule.Id].Span));
        _changes.Add(rule.Change!);
    }

    /// <summary>The rules of the base with the changes in, checked for what changes can bring about.</summary>
    public Overlay Finish()
    {
        var rules = book.Rules.Where(r => !_off.ContainsKey(r.Id)).Select(r => _changed.GetValueOrDefault(r.Id, r)).Concat(_added.Values)
            .OrderBy(r => r.Id, StringComparer.Ordinal).Select((r, i) => r with { Index = i }).ToList();
        ReportOrphans(rules);
        // A finding without rules and readers is no fault here, so of the graph's faults only circles count.
        var graph = new DiagnosticBag();
        var order = FindingGraph.Order(book.Findings, rules, graph);
        var circle = Problems.FindingCycle(SourceSpan.None, [], false).Id;
        foreach (var fault in graph.Sorted.Where(d => d.Id == circle))
            bag.Add(fault with { Span = philosophy.Span });
        if (!bag.HasErrors)
            PaysTwiceCheck.Run(book.Vocabulary, rules, book.Variants, book.Criteria, bag, r => r.Change is not null);
        return new Overlay(philosophy, _changes, rules, [.. _off.Values], order, FindingGraph.RulesOf(book.Findings, rules));
    }

    private void ReportOrphans(List<Rule> rules)
    {
        var concluded = rules.SelectMany(r => r.Conclusions).OfType<FindingConclusion>().Select(f => f.Finding).ToHashSet();
        foreach (var off in _off.Values)
        {
            foreach (var finding in off.Conclusions.OfType<FindingConclusion>().Select(f => f.Finding).Where(f => !concluded.Contains(f)))
            {
                if (rules.Find(r => r.Conditions.SelectMany(c => c.Findings).Any(f => f.Finding == finding)) is { } reader)
                    bag.Add(Problems.FindingLosesItsRules(_claimed[off.Id], off.Id, book.Findings[finding].Id, reader.Id));
            }
        }
    }
}
