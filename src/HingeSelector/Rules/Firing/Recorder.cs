using System.Numerics;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Takes down what one session concludes.</summary>
internal sealed class Recorder(RuleBook book)
{
    // One bit per candidate; rules about the athlete use the first.
    private readonly ulong[] _seen = new ulong[book.Rules.Count];
    private readonly List<TraceStep> _trace = new(128);

    /// <summary>Findings by index: true or false once proven.</summary>
    public Truth[] Findings { get; } = new Truth[book.Findings.Count];

    /// <summary>Conclusions in the order in which they came.</summary>
    public IReadOnlyList<TraceStep> Trace => _trace;

    /// <summary>How many conclusions so far.</summary>
    public int Count => _trace.Count;

    /// <summary>Takes down a rule; several branches of one rule count once.</summary>
    public void Fired(int rule, int candidate)
    {
        var bit = 1UL << Math.Max(candidate, 0);
        if ((_seen[rule] & bit) != 0)
            return;
        _seen[rule] |= bit;
        _trace.Add(new TraceStep(rule, candidate, _trace.Count));
    }

    /// <summary>Takes down a rule for several candidates.</summary>
    public void FiredFor(int rule, ulong candidates)
    {
        for (; candidates != 0; candidates &= candidates - 1)
            Fired(rule, BitOperations.TrailingZeroCount(candidates));
    }
}
