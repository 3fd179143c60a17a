namespace HingeSelector.Rules.Solving;

/// <summary>What a condition must come out as.</summary>
public enum Need
{
    /// <summary>It holds.</summary>
    True,

    /// <summary>It fails or is open.</summary>
    NotTrue,

    /// <summary>It fails.</summary>
    False,

    /// <summary>It holds or is open.</summary>
    NotFalse,
}
