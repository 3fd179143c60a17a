namespace HingeSelector.Words;

/// <summary>Which end of a scale is the worse one.</summary>
public enum WorseEnd
{
    /// <summary>Neither end.</summary>
    None,

    /// <summary>Low values.</summary>
    Lower,

    /// <summary>High values.</summary>
    Higher,
}
