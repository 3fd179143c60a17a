namespace HingeSelector.Examples.Mutating;

/// <summary>What was done to a condition.</summary>
public enum MutationKind
{
    /// <summary>A threshold was moved one step of the fact's resolution.</summary>
    Threshold,

    /// <summary>An end was taken in or left out: <c>below</c> for <c>at most</c>.</summary>
    Operator,

    /// <summary>The opposite is asked.</summary>
    Negation,

    /// <summary>A condition, a branch or a word was left out.</summary>
    Dropped,

    /// <summary>A value was left out, added or swapped.</summary>
    Value,
}
