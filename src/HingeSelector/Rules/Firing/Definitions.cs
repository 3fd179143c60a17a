using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Lays a rule book out as definitions, with a refutation for every finding that some rule reads as absent.</summary>
/// <remarks>
/// Findings come first, and among themselves they chain: a rule that finds is laid out as branches that wait for marks. Whatever else
/// reads findings is asked when all of them are decided, so it needs no branches, and rules of the same conditions share a definition.
/// </remarks>
internal sealed class Definitions
{
    private readonly RuleBook _book;
    private readonly MarkCodes _codes;
    private readonly List<Definition> _all = [];
    private readonly HashSet<int> _refuted = [];
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
        foreach (var rule in book.Rules.Where(r => r.Finds))
            definitions.AddFinder(rule);
        definitions.AddReaders(book.Rules.Where(r => !r.Finds && !(r.PerCandidate && r.Variants == 0)));
        while (definitions._toRefute.TryDequeue(out var finding))
            definitions.AddRefutation(finding);
        return definitions._all;
    }

    private void AddFinder(Rule rule)
    {
        if (rule.PerCandidate)
            throw new NetworkException($"The rule '{rule.Id}' concludes a finding for one candidate.");
        var marks = rule.Conclusions.OfType<FindingConclusion>().Select(f => MarkCodes.Present(f.Finding)).Distinct().ToList();
        AddBranches(rule.Id, marks.Max(m => PriorityOf(m / 2)), BranchExpander.All(rule.OpenConditions), [new Concluded(rule.Index, 0)], marks);
    }

    private void AddReaders(IEnumerable<Rule> rules)
    {
        foreach (var alike in rules.GroupBy(r => $"{Kind(r)}: {Key(r.OpenConditions)}", StringComparer.Ordinal))
        {
            var first = alike.First();
            var branch = new Branch([.. first.OpenConditions.Distinct()], []);
            _all.Add(new Definition(first.Id, 0, Kind(first), branch, [.. alike.Select(r => new Concluded(r.Index, r.PerCandidate ? r.Variants : 0))], []));
            foreach (var (finding, present) in first.OpenConditions.SelectMany(c => c.Findings))
            {
                if (!present)
                    Refute(finding);
            }
        }
    }

    // What looks at nothing but the athlete and the variant's own words is asked once, for all its variants together.
    private static SubjectKind Kind(Rule rule) => rule switch
    {
        { AfterSetUp: true } => SubjectKind.Second,
        { PerCandidate: true } when rule.OpenConditions.Any(c => c.Reads.Any(r => r.Word.OfCandidate)) => SubjectKind.First,
        _ => SubjectKind.Athlete,
    };

    private static string Key(IEnumerable<Condition> conditions) => string.Join(" & ", conditions.Select(c => c.Key).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    // A finding is absent when every rule that concludes it is refuted.
    private void AddRefutation(int finding)
    {
        var priority = PriorityOf(finding);
        var branch = Branch.Always;
        foreach (var rule in _book.RulesOfFinding[finding].Distinct().Select(i => _book.Rules[i]))
            branch = branch.And(Refuted(rule, priority));
        AddBranches("not " + _book.Findings[finding].Id, priority, [branch], [], [MarkCodes.Absent(finding)]);
    }

    private Branch Refuted(Rule rule, int priority)
    {
        if (!rule.OpenConditions.Any(c => c.Findings.Any()))
        {
            var all = new AllCondition(rule.OpenConditions, rule.Id, rule.Span);
            return new Branch([new NotCondition(all, "not " + rule.Id, rule.Span)], []);
        }
        var branches = BranchExpander.NotAll(rule.OpenConditions);
        if (branches.Count == 1)
            return branches[0];
        var mark = _codes.Refuted(rule.Index);
        if (!_all.Exists(d => d.Sets.Contains(mark)))
            AddBranches("not " + rule.Id, priority, branches, [], [mark]);
        return new Branch([], [mark]);
    }

    private void AddBranches(string name, int priority, IReadOnlyList<Branch> branches, IReadOnlyList<Concluded> rules, IReadOnlyList<int> sets)
    {
        for (var i = 0; i < branches.Count; i++)
        {
            _all.Add(new Definition(i == 0 ? name : $"{name}/{i + 1}", priority, SubjectKind.Undecided, branches[i], rules, sets));
            foreach (var mark in branches[i].Marks)
            {
                if (_codes.FindingOf(mark) is { Present: false } absent)
                    Refute(absent.Finding);
            }
        }
    }

    private void Refute(int finding)
    {
        if (_refuted.Add(finding))
            _toRefute.Enqueue(finding);
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
