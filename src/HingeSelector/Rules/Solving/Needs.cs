namespace HingeSelector.Rules.Solving;

/// <summary>How needs turn over.</summary>
internal static class Needs
{
    /// <summary>The need of the part when the whole is its negation.</summary>
    public static Need OfNegation(this Need need) => need switch
    {
        Need.True => Need.False,
        Need.False => Need.True,
        Need.NotTrue => Need.NotFalse,
        _ => Need.NotTrue,
    };

    /// <summary>The need that is met exactly where this one is not.</summary>
    public static Need Opposite(this Need need) => need switch
    {
        Need.True => Need.NotTrue,
        Need.NotTrue => Need.True,
        Need.False => Need.NotFalse,
        _ => Need.False,
    };
}
