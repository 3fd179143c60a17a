namespace HingeSelector.Knowledge;

/// <summary>What decides the height of the hands.</summary>
public enum HeightRuleKind
{
    /// <summary>The discs on the bar, standing on the floor.</summary>
    Floor,

    /// <summary>The low handles of the hex bar.</summary>
    LowHandle,

    /// <summary>The high handles of the hex bar.</summary>
    HighHandle,

    /// <summary>A fixed height.</summary>
    Absolute,

    /// <summary>A share of the height of the knee.</summary>
    KneeHeight,
}
