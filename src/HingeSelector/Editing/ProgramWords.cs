using System.Collections.Frozen;

namespace HingeSelector.Editing;

/// <summary>Words of the vocabulary that the program itself knows by name, so that staff cannot rename them.</summary>
/// <remarks>A test compares the list with the code; words that it names only as a key of a file are among them, to be on the safe side.</remarks>
public static class ProgramWords
{
    /// <summary>Their ids.</summary>
    public static IReadOnlySet<string> Ids { get; } = new[]
    {
        "age", "arm-length", "disc-diameter", "first-working-weight", "footwear", "grip", "held-height", "held-height-empty-bar",
        "held-height-grip", "held-height-stance", "held-height-variant", "hip-abduction", "hip-external-rotation", "hip-flexion",
        "hip-flexion-pelvis-held", "history", "hours-since-hard-throwing", "implement", "knee-to-wall", "limb-difference", "load-in-hands", "mass", "name",
        "permits", "pulled-before", "sex", "shank-length", "shoulder-external-rotation", "shoulder-external-rotation-baseline",
        "shoulder-flexion", "shoulder-flexion-baseline", "shoulder-internal-rotation", "shoulder-internal-rotation-baseline",
        "sole-thickness", "spinal-load", "stance", "start", "stature", "stature-now", "straight-leg-raise", "straight-leg-raise-pelvis-held",
        "takes-straps", "tested-1rm", "tested-1rm-straps", "thigh-length", "throwing-side", "training-age", "training-group", "trunk-length",
    }.ToFrozenSet(StringComparer.Ordinal);
}
