namespace HingeSelector.Knowledge;

/// <summary>How far to trust a reason. A grade says nothing about how strongly to act on it.</summary>
public enum Grade
{
    /// <summary>Measured in trained people.</summary>
    Trial,

    /// <summary>Measured, but indirectly.</summary>
    Laboratory,

    /// <summary>Computed by the posture and statics model.</summary>
    Mechanics,

    /// <summary>Position statement or guideline.</summary>
    Consensus,

    /// <summary>Common practice, no source.</summary>
    Practice,
}
