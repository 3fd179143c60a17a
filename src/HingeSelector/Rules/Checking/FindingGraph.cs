using HingeSelector.Diagnostics;

namespace HingeSelector.Rules.Checking;

/// <summary>Which findings depend on which, and in what order they can be decided.</summary>
public static class FindingGraph
{
    /// <summary>Orders findings so that each comes after all that its rules read; reports circles.</summary>
    public static IReadOnlyList<int> Order(IReadOnlyList<Finding> findings, IReadOnlyList<Rule> rules, DiagnosticBag bag)
    {
        var rulesOf = RulesOf(findings, rules);
        // A rule that could not be read may be the one that concludes it: then only the first fault is told.
        foreach (var finding in findings.Where(f => !bag.HasErrors && rulesOf[f.Index].Count == 0).ToList())
            bag.Add(Problems.FindingNeverConcluded(finding.Span, finding.Id));
        var order = new List<int>();
        var state = new byte[findings.Count];
        var path = new List<int>();
        foreach (var finding in findings)
            Visit(finding.Index, findings, rules, rulesOf, state, path, order, bag);
        return order;
    }

    /// <summary>Indexes of the rules that conclude each finding.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> RulesOf(IReadOnlyList<Finding> findings, IReadOnlyList<Rule> rules)
    {
        var rulesOf = findings.Select(_ => new List<int>()).ToList();
        foreach (var rule in rules)
        {
            foreach (var found in rule.Conclusions.OfType<Conclusions.FindingConclusion>())
                rulesOf[found.Finding].Add(rule.Index);
        }
        return rulesOf;
    }

    private static void Visit(int finding, IReadOnlyList<Finding> findings, IReadOnlyList<Rule> rules, IReadOnlyList<IReadOnlyList<int>> rulesOf, byte[] state, List<int> path, List<int> order, DiagnosticBag bag)
    {
        const byte open = 1;
        const byte done = 2;
        if (state[finding] == done)
            return;
        if (state[finding] == open)
        {
            var circle = path[path.IndexOf(finding)..].Append(finding).ToList();
            bag.Add(Problems.FindingCycle(findings[finding].Span, [.. circle.Select(i => findings[i].Id)], ThroughAbsence(circle, rules, rulesOf)));
            return;
        }
        state[finding] = open;
        path.Add(finding);
        foreach (var read in rulesOf[finding].SelectMany(r => rules[r].Conditions).SelectMany(c => c.Findings).Select(f => f.Finding).Distinct())
            Visit(read, findings, rules, rulesOf, state, path, order, bag);
        path.RemoveAt(path.Count - 1);
        state[finding] = done;
        order.Add(finding);
    }

    private static bool ThroughAbsence(List<int> circle, IReadOnlyList<Rule> rules, IReadOnlyList<IReadOnlyList<int>> rulesOf)
        => circle.Zip(circle.Skip(1)).Any(step => rulesOf[step.First].SelectMany(r => rules[r].Conditions).SelectMany(c => c.Findings).Any(f => f.Finding == step.Second && !f.Present));
}
