using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>Counts what a run has met, so that agreement over empty answers cannot pass for agreement.</summary>
internal sealed class Tally
{
    private readonly HashSet<int> _fired = [];
    private readonly HashSet<int> _open = [];

    public long Cases { get; private set; }

    public long Fired { get; private set; }

    public long Open { get; private set; }

    public long Present { get; private set; }

    public long Absent { get; private set; }

    /// <summary>How many rules have fired at least once.</summary>
    public int RulesFired => _fired.Count;

    /// <summary>How many rules have been open at least once.</summary>
    public int RulesOpen => _open.Count;

    public IReadOnlyCollection<int> FiredRules => _fired;

    public void Add(Evaluation evaluation)
    {
        Cases++;
        Fired += evaluation.Fired.Count;
        Open += evaluation.Open.Count;
        Present += evaluation.Findings.Count(f => f == Truth.True);
        Absent += evaluation.Findings.Count(f => f == Truth.False);
        _fired.UnionWith(evaluation.Fired.Select(f => f.Rule));
        _open.UnionWith(evaluation.Open.Select(f => f.Rule));
    }

    public void Add(Tally other)
    {
        Cases += other.Cases;
        Fired += other.Fired;
        Open += other.Open;
        Present += other.Present;
        Absent += other.Absent;
        _fired.UnionWith(other._fired);
        _open.UnionWith(other._open);
    }
}
