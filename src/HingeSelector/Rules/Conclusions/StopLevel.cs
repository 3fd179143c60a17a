namespace HingeSelector.Rules.Conclusions;

/// <summary>How far a stop reaches; higher outranks lower.</summary>
public enum StopLevel
{
    /// <summary>Limited today; what the rule still allows stays ranked.</summary>
    Today,

    /// <summary>No loaded pull until whom the rule names has answered.</summary>
    Refer,

    /// <summary>Call for help; nothing else is shown.</summary>
    Emergency,
}
