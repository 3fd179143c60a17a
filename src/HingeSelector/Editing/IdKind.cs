namespace HingeSelector.Editing;

/// <summary>What an id names.</summary>
public enum IdKind
{
    /// <summary>A rule.</summary>
    Rule,

    /// <summary>A finding.</summary>
    Finding,

    /// <summary>An entry of the bibliography.</summary>
    Source,

    /// <summary>A word of the vocabulary.</summary>
    Word,
}
