using HingeSelector.Body;
using HingeSelector.Posture;
using HingeSelector.Quantities;

namespace HingeSelector.Rendering;

/// <summary>Says what the joints have to spare, with both errors apart.</summary>
public static class SpareText
{
    private static readonly Unit _deg = Unit.Find("deg")!;

    /// <summary>The measured joints with their words in JSON and for people.</summary>
    public static IEnumerable<(string Joint, string Label, Spare Spare)> Measured(Margins? margins)
    {
        if (margins?.HipFlexion is { } hip)
            yield return ("hip-flexion", "hip bend", hip);
        if (margins?.HipAbduction is { } groin)
            yield return ("hip-abduction", "legs apart", groin);
        if (margins?.TurnOut is { } turn)
            yield return ("turn-out", "turn-out", turn);
        if (margins?.Dorsiflexion is { } ankle)
            yield return ("dorsiflexion", "ankle bend", ankle);
    }

    /// <summary>One sentence, or null when nothing was measured.</summary>
    public static string? Of(Margins? margins)
    {
        var parts = Measured(margins).Select(m => $"{m.Label} {Degrees(m.Spare.Value)} (error {Degrees(m.Spare.MeasuringError)} from measuring, {Degrees(m.Spare.ModelError)} from the model; {Side(m.Spare.Side)} side)").ToList();
        return parts.Count == 0 ? null : string.Join("; ", parts);
    }

    /// <summary>The word of a side.</summary>
    public static string Side(Side side) => side == Body.Side.Left ? "left" : "right";

    private static string Degrees(Angle angle) => QuantityText.Print(angle.Degrees, _deg);
}
