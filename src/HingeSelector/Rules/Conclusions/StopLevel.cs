namespace HingeSelector.Rules.Conclusions;

/// <summary>How far a stop reaches; higher outranks lower.</summary>
public enum StopLevel
{
    /// <summary>Limited today; what the rule still allows stays ranked.</summary>
    Today,

    /// <summary>No loaded pull until a clinician answers.</summary>
    Refer,

    /// <summary>Call for help; nothing else is shown.</summary>
    Emergency,
}
