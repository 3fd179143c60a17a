using NRules.RuleModel;

namespace HingeSelector.Rules.Firing;

/// <summary>The only action: takes down the rule for its subject and sets the marks that other rules wait for.</summary>
internal sealed class Conclude
{
    private readonly int? _rule;
    private readonly ulong _variants;
    private readonly IReadOnlyList<int> _findings;
    private readonly IReadOnlyList<int> _absent;
    private readonly int[] _marks;
    private readonly object[] _keys;

    /// <summary>Prepares the action of one definition.</summary>
    /// <param name="rule">Index of the rule; null for a refutation.</param>
    /// <param name="variants">Variants for which it concludes when it is asked about the athlete, one bit each; 0 for the subject itself.</param>
    /// <param name="findings">Findings that are then present.</param>
    /// <param name="absent">Findings that are then absent.</param>
    /// <param name="marks">Marks that some rule waits for.</param>
    public Conclude(int? rule, ulong variants, IReadOnlyList<int> findings, IReadOnlyList<int> absent, IReadOnlyList<int> marks)
    {
        _rule = rule;
        _variants = variants;
        _findings = findings;
        _absent = absent;
        _marks = [.. marks];
        _keys = [.. marks.Select(m => (object)m)];
    }

    /// <summary>Concludes.</summary>
    public void Run(IContext context, Subject subject)
    {
        if (_rule is { } rule && _variants == 0)
            subject.Recorder.Fired(rule, subject.Candidate);
        else if (_rule is { } forEach)
            subject.Recorder.FiredFor(forEach, _variants);
        foreach (var finding in _findings)
            subject.Recorder.Findings[finding] = Conditions.Truth.True;
        foreach (var finding in _absent)
            subject.Recorder.Findings[finding] = Conditions.Truth.False;
        for (var i = 0; i < _marks.Length; i++)
            context.InsertLinked(_keys[i], new Mark(_marks[i]));
    }
}
