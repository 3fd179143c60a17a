using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Neighbouring heights or grips of the room, without a gap.</summary>
/// <param name="Values">Ascending, at least one.</param>
public sealed record LengthRun(IReadOnlyList<Length> Values)
{
    /// <summary>The smallest.</summary>
    public Length From => Values[0];

    /// <summary>The largest.</summary>
    public Length To => Values[^1];
}
