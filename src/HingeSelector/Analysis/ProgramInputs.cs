namespace HingeSelector.Analysis;

/// <summary>Measured words that the program itself uses, whether or not a rule reads them.</summary>
public static class ProgramInputs
{
    /// <summary>Ids: who it is, what body and posture are worked out from, what computed words are worked out from.</summary>
    public static IReadOnlyList<string> Ids { get; } =
    [
        "name", "age", "sex", "stature", "stature-now", "mass", "limb-difference", "throwing-side", "training-age", "pulled-before",
        "thigh-length", "shank-length", "trunk-length", "arm-length", "disc-diameter", "sole-thickness",
        "straight-leg-raise", "straight-leg-raise-pelvis-held", "hip-flexion", "hip-flexion-pelvis-held", "hip-abduction", "hip-external-rotation", "knee-to-wall",
        "training-group", "held-height", "held-height-variant", "held-height-grip", "held-height-stance",
        "tested-1rm", "tested-1rm-straps", "hours-since-hard-throwing",
        "shoulder-flexion", "shoulder-external-rotation", "shoulder-internal-rotation",
        "shoulder-flexion-baseline", "shoulder-external-rotation-baseline", "shoulder-internal-rotation-baseline",
    ];
}
