namespace HingeSelector.Posture;

/// <summary>What a stance width is a measure of.</summary>
public enum StanceBasis
{
    /// <summary>Metres between the ankles.</summary>
    Metres,

    /// <summary>Multiples of the athlete's biacromial breadth.</summary>
    ShoulderBreadths,
}
