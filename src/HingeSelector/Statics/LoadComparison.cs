namespace HingeSelector.Statics;

/// <summary>Two positions side by side, as ratios of the first to the second.</summary>
public sealed record LoadComparison
{
    /// <summary>Compares at the loads that the two were worked out for.</summary>
    /// <exception cref="ArgumentException">Equal loads were claimed but differ.</exception>
    public LoadComparison(ComparisonBasis basis, StaticLoads first, StaticLoads second)
    {
        if (basis == ComparisonBasis.EqualLoad && first.Load != second.Load)
            throw new ArgumentException($"A comparison at equal load got {first.Load} and {second.Load}.");
        Basis = basis;
        Hip = first.Hip / second.Hip;
        Knee = first.Knee / second.Knee;
        Ankle = first.Ankle / second.Ankle;
        L5S1 = first.L5S1 / second.L5S1;
        Compression = first.LowBack.Compression / second.LowBack.Compression;
        LoadShear = first.LowBack.LoadShear / second.LowBack.LoadShear;
    }

    /// <summary>Which loads were compared; printed with every ratio.</summary>
    public ComparisonBasis Basis { get; }

    /// <summary>Hip moments.</summary>
    public double Hip { get; }

    /// <summary>Knee moments; negative when one is held by extensors and the other by flexors.</summary>
    public double Knee { get; }

    /// <summary>Ankle moments.</summary>
    public double Ankle { get; }

    /// <summary>Moments at the lowest disc.</summary>
    public double L5S1 { get; }

    /// <summary>Compression of the lowest disc.</summary>
    public double Compression { get; }

    /// <summary>Shear of the weights across the lowest disc.</summary>
    public double LoadShear { get; }
}
