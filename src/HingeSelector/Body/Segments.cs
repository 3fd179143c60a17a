namespace HingeSelector.Body;

/// <summary>Every length of one body that the posture model uses, each with its error.</summary>
public sealed class Segments
{
    private readonly SegmentLength[] _lengths;
    private readonly double[] _correlations;

    /// <summary>Takes a length for every <see cref="SegmentName"/> and the correlations of their errors.</summary>
    /// <param name="lengths">One entry for each name.</param>
    /// <param name="correlations">
    /// Correlation of the errors of two segments, from -1 to 1; pairs left out are taken as unrelated.
    /// Thigh and trunk share the palpated point of the hip, so their errors oppose one another.
    /// </param>
    /// <exception cref="ArgumentException">A name has no length.</exception>
    public Segments(
        IReadOnlyDictionary<SegmentName, SegmentLength> lengths,
        IReadOnlyDictionary<SegmentPair, double>? correlations = null)
    {
        _lengths = new SegmentLength[Count];
        for (var i = 0; i < Count; i++)
        {
            if (!lengths.TryGetValue((SegmentName)i, out _lengths[i]))
                throw new ArgumentException($"The length {(SegmentName)i} is missing.", nameof(lengths));
        }

        _correlations = new double[Count * Count];
        foreach (var (pair, value) in correlations ?? new Dictionary<SegmentPair, double>())
        {
            _correlations[((int)pair.First * Count) + (int)pair.Second] = value;
            _correlations[((int)pair.Second * Count) + (int)pair.First] = value;
        }
    }

    /// <summary>How many segments there are.</summary>
    public static int Count { get; } = Enum.GetValues<SegmentName>().Length;

    /// <summary>The length of one segment.</summary>
    public SegmentLength this[SegmentName name] => _lengths[(int)name];

    /// <summary>The length of one segment in metres.</summary>
    public double Metres(SegmentName name) => _lengths[(int)name].Value.Metres;

    /// <summary>Correlation of the errors of two different segments, from -1 to 1.</summary>
    public double Correlation(SegmentName first, SegmentName second) => _correlations[((int)first * Count) + (int)second];

    /// <summary>The same body with one length changed; its error stays.</summary>
    public Segments With(SegmentName name, Quantities.Length value)
    {
        var lengths = new Dictionary<SegmentName, SegmentLength>();
        var correlations = new Dictionary<SegmentPair, double>();
        for (var i = 0; i < Count; i++)
        {
            lengths[(SegmentName)i] = _lengths[i];
            for (var j = i + 1; j < Count; j++)
                correlations[new SegmentPair((SegmentName)i, (SegmentName)j)] = _correlations[(i * Count) + j];
        }

        lengths[name] = lengths[name] with { Value = value };
        return new Segments(lengths, correlations);
    }
}
