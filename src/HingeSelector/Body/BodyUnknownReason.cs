namespace HingeSelector.Body;

/// <summary>Why stature and sex do not give an athlete's segments.</summary>
public enum BodyUnknownReason
{
    /// <summary>Stature is not given.</summary>
    NoStature,

    /// <summary>Sex is not given.</summary>
    NoSex,

    /// <summary>Age is not given, so it is not known whether the survey covers it.</summary>
    NoAge,

    /// <summary>Younger or older than the people surveyed.</summary>
    OutsideSurveyAge,

    /// <summary>Shorter or taller than anyone surveyed.</summary>
    OutsideSurveyStature,

    /// <summary>A limb difference is noted: ratios of other people do not apply.</summary>
    LimbDifference,
}
