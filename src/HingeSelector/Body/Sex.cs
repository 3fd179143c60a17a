namespace HingeSelector.Body;

/// <summary>The sex whose survey ratios describe an athlete's body.</summary>
public enum Sex
{
    /// <summary>Not given.</summary>
    Unknown,

    /// <summary>Female.</summary>
    Female,

    /// <summary>Male.</summary>
    Male,
}
