using HingeSelector.Knowledge;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Recommending;

/// <summary>Points per candidate and criterion, from the rules that hold.</summary>
public sealed class Scores
{
    private const int Most = 3;

    private readonly int[,] _points;
    private readonly IReadOnlyList<int> _weights;

    private Scores(int[,] points, IReadOnlyList<int> weights)
    {
        _points = points;
        _weights = weights;
    }

    /// <summary>Adds up the points lines of fired rules, clamped per criterion.</summary>
    public static Scores Of(RuleBook book, IEnumerable<Firing> fired, Philosophy philosophy)
    {
        var points = new int[book.Variants.Count, book.Criteria.Count];
        foreach (var firing in fired)
        {
            var conclusions = book.Rules[firing.Rule].Conclusions;
            for (var i = 0; i < conclusions.Count; i++)
            {
                if (conclusions[i] is not PointsConclusion line)
                    continue;
                if (firing.Candidate >= 0)
                    points[firing.Candidate, line.Criterion] += line.Amount;
                else
                    AddToAll(points, line);
            }
        }
        return new Scores(points, philosophy.Weights);
    }

    /// <summary>Points of a candidate in a criterion, clamped.</summary>
    public int Points(int candidate, int criterion) => Math.Clamp(_points[candidate, criterion], -Most, Most);

    /// <summary>Points of a candidate by criterion.</summary>
    public IReadOnlyList<int> Points(int candidate) => [.. Enumerable.Range(0, _weights.Count).Select(c => Points(candidate, c))];

    /// <summary>Weighted points of a candidate.</summary>
    public int Total(int candidate)
    {
        var total = 0;
        for (var c = 0; c < _weights.Count; c++)
            total += _weights[c] * Points(candidate, c);
        return total;
    }

    private static void AddToAll(int[,] points, PointsConclusion line)
    {
        for (var i = 0; i < points.GetLength(0); i++)
            points[i, line.Criterion] += line.Amount;
    }
}
