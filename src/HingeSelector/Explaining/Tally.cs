using HingeSelector.Knowledge;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Explaining;

/// <summary>What the rules that hold add up to in one decision.</summary>
internal sealed class Tally(int variants, int criteria)
{
    private const int Most = 3;
    private const ulong HashStart = 14695981039346656037;
    private const ulong HashStep = 1099511628211;

    private readonly int[] _points = new int[variants * criteria];
    private readonly List<RequestedChange>[] _requests = [.. Enumerable.Range(0, variants).Select(_ => new List<RequestedChange>())];

    /// <summary>Highest stop; null without one.</summary>
    public StopLevel? Stop { get; private set; }

    /// <summary>Variants that are out, one bit each.</summary>
    public ulong Excluded { get; private set; }

    /// <summary>A number that tells apart which rules hold: two decisions with the same number rest on the same rules.</summary>
    public ulong Signature { get; private set; } = HashStart;

    /// <summary>Set-up changes asked for a variant.</summary>
    public IReadOnlyList<RequestedChange> Requests(int variant) => _requests[variant];

    /// <summary>Counts a rule that holds.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="candidate">Place of the variant; below zero when it is about the athlete.</param>
    public void Add(Rule rule, int candidate)
    {
        Signature = (Signature ^ (ulong)((rule.Index * 65) + candidate + 1)) * HashStep;
        for (var i = 0; i < rule.Conclusions.Count; i++)
        {
            switch (rule.Conclusions[i])
            {
                case StopConclusion stop:
                    Add(stop);
                    break;
                case ExclusionConclusion:
                    Excluded |= candidate < 0 ? ulong.MaxValue : 1UL << candidate;
                    break;
                case RequestConclusion request:
                    for (var v = candidate < 0 ? 0 : candidate; v < (candidate < 0 ? variants : candidate + 1); v++)
                        _requests[v].Add(request.Request);
                    break;
                case PointsConclusion points:
                    for (var v = candidate < 0 ? 0 : candidate; v < (candidate < 0 ? variants : candidate + 1); v++)
                        _points[(v * criteria) + points.Criterion] += points.Amount;
                    break;
            }
        }
    }

    /// <summary>Weighted points of every variant.</summary>
    public int[] Totals(Philosophy philosophy)
    {
        var totals = new int[variants];
        for (var v = 0; v < variants; v++)
        {
            for (var c = 0; c < criteria; c++)
                totals[v] += philosophy.Weights[c] * Math.Clamp(_points[(v * criteria) + c], -Most, Most);
        }
        return totals;
    }

    private void Add(StopConclusion stop)
    {
        if (Stop is null || stop.Level > Stop)
            Stop = stop.Level;
        // What a stop for today does not allow is out.
        if (stop.Level == StopLevel.Today)
            Excluded |= ~stop.Allowed;
    }
}
