using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>HS3101: rules whose conditions no screen can meet, be it through a finding that is never found.</summary>
internal static class NeverFiresCheck
{
    /// <summary>Looks at every rule that cannot fire.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var living = book.Living.Select(r => r.Index).ToHashSet();
        var dead = book.Book.Rules.Where(r => !living.Contains(r.Index)).Select(r => (Rule: r, Core: Core(r, book))).ToList();
        foreach (var (rule, core) in dead)
        {
            // The rule that would find it is told already, and names this one.
            if (Missing(core) is not null)
                continue;
            var found = rule.Conclusions.OfType<Rules.Conclusions.FindingConclusion>().Select(f => f.Finding).ToHashSet();
            var dependents = dead.Where(d => Missing(d.Core) is { } missing && found.Contains(missing)).Select(d => d.Rule.Id).ToList();
            bag.Add(Problems.NeverFires(core[^1].Span, rule.Id, [.. core.Select(c => c.Text)], dependents));
        }
    }

    /// <summary>The finding for want of which alone a rule cannot fire; null when something else is wrong with it.</summary>
    private static int? Missing(IReadOnlyList<Condition> core) => core is [FindingCondition { Present: true } only] ? only.Finding : null;

    /// <summary>As few lines as possible that cannot hold together.</summary>
    private static List<Condition> Core(Rule rule, CheckedBook book)
    {
        var core = rule.Conditions.ToList();
        foreach (var condition in rule.Conditions.Where(_ => core.Count > 1))
        {
            var without = core.Where(c => !ReferenceEquals(c, condition)).ToList();
            if (book.Solver.Find([.. without.Select(c => new Goal(book.Space.Of(c), Need.True))]) is null)
                core = without;
        }
        return core;
    }
}
