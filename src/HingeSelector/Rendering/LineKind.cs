namespace HingeSelector.Rendering;

/// <summary>What a line of an answer is.</summary>
public enum LineKind
{
    /// <summary>Names the athlete and the outcome.</summary>
    Title,

    /// <summary>Begins a part.</summary>
    Heading,

    /// <summary>Says something.</summary>
    Text,

    /// <summary>Says something that most readers pass over.</summary>
    Faint,
}
