using HingeSelector.Knowledge;
using HingeSelector.Posture;

namespace HingeSelector.Candidates;

/// <summary>A variant for one athlete: what the model says of its standard set-up and of the set-up that was chosen.</summary>
/// <param name="Variant">The variant.</param>
/// <param name="Heights">Hand heights that the room can make; null when the model does not cover the variant.</param>
/// <param name="Pull">The variant in the words of the model; null when the model does not cover it.</param>
/// <param name="Standard">The standard set-up; null without a model or body.</param>
/// <param name="StandardOutcome">What the model says of it.</param>
/// <param name="StandardMargins">What the joints have to spare in it.</param>
public sealed record Candidate(Variant Variant, HandHeights? Heights, PullGeometry? Pull, SetUp? Standard, PostureOutcome? StandardOutcome, Margins? StandardMargins)
{
    /// <summary>The outcome of the set-up search; null when the model does not cover the variant.</summary>
    public SetUpChoice? Choice { get; init; }

    /// <summary>Moments in the chosen set-up; null when they cannot be worked out.</summary>
    public Statics.StaticLoads? Loads { get; init; }
}
