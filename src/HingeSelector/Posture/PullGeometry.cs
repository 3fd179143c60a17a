namespace HingeSelector.Posture;

/// <summary>A way of pulling as far as the planar model needs to know it.</summary>
public sealed record PullGeometry
{
    /// <summary>What is in the hands.</summary>
    public required ImplementKind Implement { get; init; }

    /// <summary>How the legs share the work.</summary>
    public LegUse Legs { get; init; }

    /// <summary>Where the arms pass the legs.</summary>
    public ArmPlacement Arms { get; init; }

    /// <summary>How the knees find their bend.</summary>
    public KneeRule Knees { get; init; }

    /// <summary>How wide the feet stand.</summary>
    public required StanceRule Stance { get; init; }

    /// <summary>Which grips belong to it.</summary>
    public required GripRule Grip { get; init; }
}
