namespace HingeSelector.Body;

/// <summary>Where the four main segments (thigh, shank, trunk, arm) come from. The small ones always follow stature.</summary>
public enum BodyBasis
{
    /// <summary>All four were measured.</summary>
    Measured,

    /// <summary>All four follow stature and sex.</summary>
    Survey,

    /// <summary>Some were measured, the others follow stature and sex.</summary>
    MeasuredAndSurvey,
}
