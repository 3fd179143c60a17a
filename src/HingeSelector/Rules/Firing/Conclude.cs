using NRules.RuleModel;

namespace HingeSelector.Rules.Firing;

/// <summary>The only action: takes down the rules for their subject and sets the marks that other rules wait for.</summary>
internal sealed class Conclude
{
    private readonly Concluded[] _rules;
    private readonly IReadOnlyList<int> _findings;
    private readonly IReadOnlyList<int> _absent;
    private readonly int[] _marks;
    private readonly object[] _keys;

    /// <summary>Prepares the action of one definition.</summary>
    /// <param name="rules">Rules that hold; none for a refutation.</param>
    /// <param name="findings">Findings that are then present.</param>
    /// <param name="absent">Findings that are then absent.</param>
    /// <param name="marks">Marks that some rule waits for.</param>
    public Conclude(IReadOnlyList<Concluded> rules, IReadOnlyList<int> findings, IReadOnlyList<int> absent, IReadOnlyList<int> marks)
    {
        _rules = [.. rules];
        _findings = findings;
        _absent = absent;
        _marks = [.. marks];
        _keys = [.. marks.Select(m => (object)m)];
    }

    /// <summary>Concludes.</summary>
    public void Run(IContext context, Subject subject)
    {
        foreach (var (rule, variants) in _rules)
            TakeDown(rule, variants, subject);
        for (var i = 0; i < _findings.Count; i++)
            subject.Recorder.Findings[_findings[i]] = Conditions.Truth.True;
        for (var i = 0; i < _absent.Count; i++)
            subject.Recorder.Findings[_absent[i]] = Conditions.Truth.False;
        for (var i = 0; i < _marks.Length; i++)
            context.InsertLinked(_keys[i], new Mark(_marks[i]));
    }

    private static void TakeDown(int rule, ulong variants, Subject subject)
    {
        if (subject.Candidate < 0 && variants == 0)
            subject.Recorder.Fired(rule, subject.Candidate);
        else if (subject.Candidate < 0)
            subject.Recorder.FiredFor(rule, variants);
        else if ((variants >> subject.Candidate & 1) != 0)
            subject.Recorder.Fired(rule, subject.Candidate);
    }
}
