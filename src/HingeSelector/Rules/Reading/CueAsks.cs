namespace HingeSelector.Rules.Reading;

/// <summary>What a cue can ask of the body; a rule can withhold cues by these names.</summary>
public static class CueAsks
{
    /// <summary>All names.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "brace", "push-floor", "hips-back", "long-arms", "bar-close", "chest-up", "arch", "lean-back", "squeeze-shoulder-blades",
        "knees-out", "fast-up", "slow-down", "neck-neutral", "stand-tall", "feel-tension",
    ];
}
