namespace HingeSelector.Explaining;

/// <summary>Where an option stands.</summary>
public enum OptionPlace
{
    /// <summary>The first choice.</summary>
    First,

    /// <summary>Tied with the first.</summary>
    Tied,

    /// <summary>Ranked behind it.</summary>
    Behind,

    /// <summary>Out for this athlete now.</summary>
    Out,

    /// <summary>Nothing is ranked.</summary>
    NotRanked,
}
