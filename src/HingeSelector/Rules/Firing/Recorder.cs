using System.Numerics;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Rules.Firing;

/// <summary>Takes down what one session concludes.</summary>
internal sealed class Recorder(RuleBook book)
{
    // One bit per candidate; rules about the athlete use the first.
    private readonly ulong[] _seen = new ulong[book.Rules.Count];
    private readonly List<TraceStep> _trace = new(book.Rules.Count * 2);

    /// <summary>Findings by index: true or false once proven.</summary>
    public Truth[] Findings { get; } = new Truth[book.Findings.Count];

    /// <summary>Conclusions in the order in which they came.</summary>
    public IReadOnlyList<TraceStep> Trace => _trace;

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

    /// <summary>Notes what was taken down, in order of rule and candidate.</summary>
    /// <param name="evaluation">Where.</param>
    /// <param name="afterSetUp">Whether the rules that read the chosen set-up are meant, or those that do not.</param>
    public void Note(Evaluation evaluation, bool afterSetUp)
    {
        for (var rule = 0; rule < _seen.Length; rule++)
        {
            if (_seen[rule] == 0 || book.Rules[rule].AfterSetUp != afterSetUp)
                continue;
            if (!book.Rules[rule].PerCandidate)
                evaluation.NoteFired(new Evaluating.Firing(rule, Evaluating.Firing.OfAthlete));
            else
            {
                for (var left = _seen[rule]; left != 0; left &= left - 1)
                    evaluation.NoteFired(new Evaluating.Firing(rule, BitOperations.TrailingZeroCount(left)));
            }
        }
    }
}
