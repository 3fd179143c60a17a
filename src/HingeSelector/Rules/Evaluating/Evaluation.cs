using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Evaluating;

/// <summary>What an evaluation of the rules found: findings, rules that hold, rules that cannot be decided.</summary>
/// <param name="findings">Findings by index.</param>
public sealed class Evaluation(Truth[] findings)
{
    private readonly List<Firing> _fired = new(512);
    private readonly List<Firing> _open = [];

    /// <summary>Findings by index.</summary>
    public Truth[] Findings { get; } = findings;

    /// <summary>Rules that hold.</summary>
    public IReadOnlyList<Firing> Fired => _fired;

    /// <summary>Rules that cannot be decided.</summary>
    public IReadOnlyList<Firing> Open => _open;

    /// <summary>Notes the outcome of one rule.</summary>
    public void Note(Rule rule, int candidate, Truth holds)
    {
        if (holds == Truth.True)
            _fired.Add(new Firing(rule.Index, candidate));
        else if (holds == Truth.Open)
            _open.Add(new Firing(rule.Index, candidate));
    }

    /// <summary>Notes a rule that holds.</summary>
    public void NoteFired(Firing firing) => _fired.Add(firing);
}
