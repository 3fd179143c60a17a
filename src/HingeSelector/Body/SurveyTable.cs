namespace HingeSelector.Body;

/// <summary>Body proportions of a survey of adults; the numbers are those of <c>rules/model.yaml</c>.</summary>
public sealed class SurveyTable
{
    /// <summary>Takes both sexes and the ages that the survey covers.</summary>
    /// <exception cref="ArgumentException">A segment has no ratio in one of the sexes.</exception>
    public SurveyTable(double youngestYears, double oldestYears, SexSurvey female, SexSurvey male)
    {
        YoungestYears = youngestYears;
        OldestYears = oldestYears;
        Female = female;
        Male = male;
        Both = Mixture(female, male);
        foreach (var name in Enum.GetValues<SegmentName>())
        {
            if (!female.Ratios.ContainsKey(name) || !male.Ratios.ContainsKey(name))
                throw new ArgumentException($"The survey has no ratio for {name} in both sexes.");
        }
    }

    /// <summary>The youngest age surveyed, in years.</summary>
    public double YoungestYears { get; }

    /// <summary>The oldest age surveyed, in years.</summary>
    public double OldestYears { get; }

    /// <summary>The women.</summary>
    public SexSurvey Female { get; }

    /// <summary>The men.</summary>
    public SexSurvey Male { get; }

    /// <summary>Both sexes in equal parts: for the small lengths of a measured athlete whose sex is not given.</summary>
    public SexSurvey Both { get; }

    /// <summary>The people to compare an athlete with.</summary>
    public SexSurvey For(Sex sex) => sex switch { Sex.Female => Female, Sex.Male => Male, _ => Both };

    private static SexSurvey Mixture(SexSurvey a, SexSurvey b)
    {
        var ratios = new Dictionary<SegmentName, SurveyRatio>();
        foreach (var (name, x) in a.Ratios)
        {
            if (!b.Ratios.TryGetValue(name, out var y))
                continue;
            // Variance of an even mixture: the mean variance plus that of the two means.
            var variance = ((x.Deviation * x.Deviation) + (y.Deviation * y.Deviation)) / 2 + Math.Pow((x.Mean - y.Mean) / 2, 2);
            ratios[name] = new SurveyRatio((x.Mean + y.Mean) / 2, Math.Sqrt(variance));
        }

        var shortest = a.ShortestStature < b.ShortestStature ? a.ShortestStature : b.ShortestStature;
        var tallest = a.TallestStature > b.TallestStature ? a.TallestStature : b.TallestStature;
        return new SexSurvey(shortest, tallest, ratios, new Dictionary<SegmentPair, double>());
    }
}
