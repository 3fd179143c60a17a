namespace HingeSelector.Rules;

/// <summary>What a philosophy does to a rule.</summary>
public enum RuleChangeKind
{
    /// <summary>Its points, a number in its conditions or its reason differ.</summary>
    Changed,

    /// <summary>It does not count.</summary>
    Off,

    /// <summary>The base does not hold it.</summary>
    Added,
}
