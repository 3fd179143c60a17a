using HingeSelector.Body;

namespace HingeSelector.Explaining;

/// <summary>The survey of one sex with the ratios of one person instead of the means; how segments go together is kept.</summary>
internal sealed class Scatter
{
    private readonly SexSurvey _survey;
    private readonly double[,] _root;

    public Scatter(SexSurvey survey)
    {
        _survey = survey;
        _root = Root(survey);
    }

    /// <summary>One person.</summary>
    /// <param name="shape">Independent normal draws, one a segment.</param>
    public SexSurvey Of(double[] shape)
    {
        var ratios = new Dictionary<SegmentName, SurveyRatio>(_survey.Ratios.Count);
        foreach (var (name, ratio) in _survey.Ratios)
        {
            var off = 0.0;
            for (var j = 0; j <= (int)name; j++)
                off += _root[(int)name, j] * shape[j];
            ratios.Add(name, ratio with { Mean = ratio.Mean + (ratio.Deviation * off) });
        }
        return _survey with { Ratios = ratios };
    }

    /// <summary>The lower triangle whose product with itself is the matrix of correlations (Cholesky).</summary>
    private static double[,] Root(SexSurvey survey)
    {
        var n = Segments.Count;
        var root = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = i == j ? 1 : Correlation(survey, (SegmentName)i, (SegmentName)j);
                for (var k = 0; k < j; k++)
                    sum -= root[i, k] * root[j, k];
                // Published correlations are rounded: what is left may be a hair below zero.
                root[i, j] = i == j ? Math.Sqrt(Math.Max(0, sum)) : root[j, j] > 0 ? sum / root[j, j] : 0;
            }
        }
        return root;
    }

    private static double Correlation(SexSurvey survey, SegmentName a, SegmentName b)
        => survey.Correlations.TryGetValue(new SegmentPair(a, b), out var value) || survey.Correlations.TryGetValue(new SegmentPair(b, a), out value) ? value : 0;
}
