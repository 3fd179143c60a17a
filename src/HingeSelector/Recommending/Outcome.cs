namespace HingeSelector.Recommending;

/// <summary>What kind of answer an athlete gets; each must look different on every surface.</summary>
public enum Outcome
{
    /// <summary>A ranking without limits.</summary>
    Ranked,

    /// <summary>A ranking limited to what today's stops allow.</summary>
    LimitedToday,

    /// <summary>Questions that must be answered first are not answered.</summary>
    Held,

    /// <summary>No loaded pull until whom the stops name has answered.</summary>
    Refer,

    /// <summary>Call for help.</summary>
    Emergency,
}
