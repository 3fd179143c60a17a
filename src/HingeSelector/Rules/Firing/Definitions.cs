using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Lays a rule book out as definitions, with a refutation for every finding that some rule reads as absent.</summary>
internal sealed class Definitions
{
    private readonly RuleBook _book;
    private readonly MarkCodes _codes;
    private readonly List<Definition> _all = [];
    private readonly HashSet<int> _wanted = [];
    private readonly Queue<int> _toRefute = [];

    private Definitions(RuleBook book)
    {
        _book = book;
        _codes = new MarkCodes(book.Findings.Count);
    }

    /// <summary>All definitions of a book.</summary>
    public static IReadOnlyList<Definition> Of(RuleBook book)
    {
        var definitions = new Definitions(book);
        foreach (var rule in book.Rules)
            definitions.AddRule(rule);
        while (definitions._toRefute.TryDequeue(out var finding))
            definitions.AddRefutation(finding);
        return definitions._all;
    }

    private void AddRule(Rule rule)
    {
        if (rule.PerCandidate && rule.Finds)
            throw new NetworkException($"The rule '{rule.Id}' concludes a finding for one candidate.");
        if (rule.PerCandidate && rule.Variants == 0)
            return;
        var kind = !rule.PerCandidate ? SubjectKind.Athlete : rule.AfterSetUp ? SubjectKind.Second : SubjectKind.First;
        var variants = rule.PerCandidate ? rule.Variants : 0;
        var marks = rule.Conclusions.OfType<FindingConclusion>().Select(f => MarkCodes.Present(f.Finding)).Distinct().ToList();
        var priority = marks.Count == 0 ? 0 : marks.Max(m => PriorityOf(m / 2));
        Add(rule.Id, priority, kind, variants, BranchExpander.All(rule.OpenConditions), rule.Index, marks);
    }

    // A finding is absent when every rule that concludes it is refuted.
    private void AddRefutation(int finding)
    {
        var priority = PriorityOf(finding);
        var branch = Branch.Always;
        foreach (var rule in _book.RulesOfFinding[finding].Distinct().Select(i => _book.Rules[i]))
            branch = branch.And(Refuted(rule, priority));
        Add("not " + _book.Findings[finding].Id, priority, SubjectKind.Athlete, 0, [branch], null, [MarkCodes.Absent(finding)]);
    }

    private Branch Refuted(Rule rule, int priority)
    {
        if (!rule.OpenConditions.Any(c => c.Findings.Any()))
        {
            var all = new AllCondition(rule.OpenConditions, rule.Id, rule.Span);
            return new Branch([new NotCondition(all, "not " + rule.Id, rule.Span)], [], []);
        }
        var branches = BranchExpander.NotAll(rule.OpenConditions);
        if (branches.Count == 1)
            return branches[0];
        var mark = _codes.Refuted(rule.Index);
        if (!_all.Exists(d => d.Sets.Contains(mark)))
            Add("not " + rule.Id, priority, SubjectKind.Athlete, 0, branches, null, [mark]);
        return new Branch([], [], [mark]);
    }

    private void Add(string name, int priority, SubjectKind kind, ulong variants, IReadOnlyList<Branch> branches, int? rule, IReadOnlyList<int> sets)
    {
        for (var i = 0; i < branches.Count; i++)
        {
            // What looks at nothing but the athlete and the variant's own words is asked once, for all its variants together.
            var asks = kind == SubjectKind.First && branches[i].OfCandidate.Count == 0 ? SubjectKind.Athlete : kind;
            _all.Add(new Definition(i == 0 ? name : $"{name}/{i + 1}", priority, asks, variants, branches[i], rule, sets));
            foreach (var mark in branches[i].Marks)
            {
                if (_wanted.Add(mark) && _codes.FindingOf(mark) is { Present: false } absent)
                    _toRefute.Enqueue(absent.Finding);
            }
        }
    }

    private int PriorityOf(int finding)
    {
        for (var i = 0; i < _book.FindingOrder.Count; i++)
        {
            if (_book.FindingOrder[i] == finding)
                return _book.FindingOrder.Count - i;
        }
        return 0;
    }

    /// <summary>Marks that some definition waits for.</summary>
    public static IReadOnlySet<int> Wanted(IEnumerable<Definition> definitions) => definitions.SelectMany(d => d.Branch.Marks).ToHashSet();
}
