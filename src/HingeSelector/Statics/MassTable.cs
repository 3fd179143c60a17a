namespace HingeSelector.Statics;

/// <summary>How a body's mass is spread over the links of the model; the numbers are those of <c>rules/model.yaml</c>.</summary>
public sealed record MassTable
{
    /// <summary>Trunk with head and neck, without arms; from hip to shoulder.</summary>
    public required MassShare TrunkAndHead { get; init; }

    /// <summary>The part of it below the lowest disc of the spine; from hip to shoulder.</summary>
    public required MassShare Pelvis { get; init; }

    /// <summary>One arm with its hand; from shoulder to wrist.</summary>
    public required MassShare Arm { get; init; }

    /// <summary>One thigh; from hip to knee.</summary>
    public required MassShare Thigh { get; init; }

    /// <summary>One shank; from knee to ankle.</summary>
    public required MassShare Shank { get; init; }

    /// <summary>One foot; from ankle to ball.</summary>
    public required MassShare Foot { get; init; }

    /// <summary>All parts together; 1 but for rounding in the source.</summary>
    public double Total => TrunkAndHead.Share + (2 * (Arm.Share + Thigh.Share + Shank.Share + Foot.Share));
}
