namespace HingeSelector.Rules.Conclusions;

/// <summary>Who has to answer before a stop of level refer ends, in the order in which they are named.</summary>
public enum WhoAnswers
{
    /// <summary>Nobody: the stop is of another level.</summary>
    Nobody,

    /// <summary>A clinician.</summary>
    Clinician,

    /// <summary>A parent or guardian.</summary>
    Guardian,

    /// <summary>The athlete.</summary>
    Athlete,

    /// <summary>The staff of the club.</summary>
    Staff,
}
