namespace HingeSelector.Posture;

/// <summary>What is in the hands, as far as the posture depends on it.</summary>
public enum ImplementKind
{
    /// <summary>A straight bar in front of the shins; the shank leans until the shin touches it.</summary>
    StraightBar,

    /// <summary>Handles at the sides (hex bar, two kettlebells); the shank leans freely.</summary>
    HandlesBeside,

    /// <summary>One load between the feet (kettlebell); the shank leans freely.</summary>
    LoadBetweenFeet,
}
