namespace HingeSelector.Rules.Conditions;

/// <summary>Whether a condition holds, by what is known.</summary>
public enum Truth : sbyte
{
    /// <summary>It fails, whatever the unknown facts turn out to be.</summary>
    False = -1,

    /// <summary>It cannot be decided yet.</summary>
    Open = 0,

    /// <summary>It holds, whatever the unknown facts turn out to be.</summary>
    True = 1,
}
