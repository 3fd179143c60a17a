namespace HingeSelector.Words;

/// <summary>What the value of a word looks like.</summary>
public enum WordKind
{
    /// <summary>A number with the unit of its dimension.</summary>
    Number,

    /// <summary>One value of a closed list; yes-no words are choices of no and yes.</summary>
    Choice,

    /// <summary>Any values of a closed list, also none.</summary>
    Set,

    /// <summary>Free text; rules cannot read it.</summary>
    Text,

    /// <summary>A date; rules cannot read it.</summary>
    Date,
}
