namespace HingeSelector.Knowledge;

/// <summary>What is taken when neither day nor room says it, from rules/assumptions.yaml. Lengths in metres.</summary>
public sealed record Assumptions
{
    /// <summary>Diameter of the largest disc.</summary>
    public required double DiscDiameter { get; init; }

    /// <summary>Sole of the shoe.</summary>
    public required double SoleThickness { get; init; }

    /// <summary>Height of the low handles of a hex bar.</summary>
    public required double LowHandle { get; init; }

    /// <summary>Height of its high handles.</summary>
    public required double HighHandle { get; init; }

    /// <summary>Step of bar heights without a room file.</summary>
    public required double HeightStep { get; init; }

    /// <summary>Highest start that is looked for.</summary>
    public required double HighestStart { get; init; }

    /// <summary>Step of grips.</summary>
    public required double GripStep { get; init; }

    /// <summary>Step of stances.</summary>
    public required double StanceStep { get; init; }

    /// <summary>Steps by which a stance may be changed.</summary>
    public required int MostStepsOfStance { get; init; }

    /// <summary>Load at which moments are compared, as a multiple of body mass.</summary>
    public required double ComparisonLoad { get; init; }

    /// <summary>Distance between the elbows, upper arms out to the sides, of a body that is not known.</summary>
    public required double ElbowToElbow { get; init; }

    /// <summary>Distance between the rings on the bar.</summary>
    public required double RingSpacing { get; init; }
}
