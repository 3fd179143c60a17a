namespace HingeSelector.Explaining;

/// <summary>Looks along a row of values for the first at which another choice comes out.</summary>
/// <remarks>
/// Values are tried in strides. Inside a stride whose ends rest on the same rules nothing is looked for; where the rules differ
/// the stride is halved until it is one step wide. So a change back and forth inside one stride is found as well, unless both
/// crossings belong to the same rule.
/// </remarks>
internal sealed class FirstChange(Decision from, Func<int, Decision> decide)
{
    private readonly Dictionary<int, Decision> _known = [];

    /// <summary>The first step with another choice; null when there is none.</summary>
    /// <param name="start">Step at which the choice is known to be that of the beginning.</param>
    /// <param name="stops">Steps to try, in the order in which they lie.</param>
    public int? Along(int start, IEnumerable<int> stops)
    {
        _known[start] = from;
        var last = start;
        foreach (var stop in stops)
        {
            if (Between(last, stop) is { } found)
                return found;
            last = stop;
        }
        return null;
    }

    /// <summary>The decision at a step.</summary>
    public Decision At(int step)
    {
        if (!_known.TryGetValue(step, out var decision))
            _known.Add(step, decision = decide(step));
        return decision;
    }

    private int? Between(int near, int far)
    {
        var (a, b) = (At(near), At(far));
        var same = from.SameChoice(b);
        if (near == far || (same && a.Signature == b.Signature))
            return null;
        if (Math.Abs(far - near) == 1)
            return same ? null : far;
        var middle = near + ((far - near) / 2);
        return Between(near, middle) ?? Between(middle, far);
    }
}
