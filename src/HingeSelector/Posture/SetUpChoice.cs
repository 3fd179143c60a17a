using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>The answer of a set-up search.</summary>
public sealed record SetUpChoice
{
    /// <summary>The set-up to try first.</summary>
    public required SetUp FirstTry { get; init; }

    /// <summary>What the model says of it; null when the body is not known.</summary>
    public required PostureOutcome? Outcome { get; init; }

    /// <summary>What the joints have to spare in it; null when it has no position.</summary>
    public required Margins? Margins { get; init; }

    /// <summary>Whether it fits; a confirmed held height counts as fitting.</summary>
    public required Fit Fit { get; init; }

    /// <summary>Whether it fits by computation alone.</summary>
    public required Fit ComputedFit { get; init; }

    /// <summary>The heights that would do at the chosen grip.</summary>
    public required LengthBand Heights { get; init; }

    /// <summary>The grips that would do at the chosen height.</summary>
    public required LengthBand Grips { get; init; }

    /// <summary>
    /// The lowest height of the room, from the standard one upwards, that fits by computation at the chosen grip; null when
    /// none does or the hip was not measured.
    /// </summary>
    public required Length? ComputedLowest { get; init; }

    /// <summary>The held height, when it speaks for the chosen grip and stance.</summary>
    public required HeldHeight? Held { get; init; }

    /// <summary>Held height less computed lowest height; positive when the athlete needed a higher bar than computed.</summary>
    public Length? HeldLessComputed => Held?.Height - ComputedLowest;

    /// <summary>Why there are no segments; null when there are.</summary>
    public BodyUnknownReason? BodyUnknown { get; init; }

    /// <summary>Why it came out so.</summary>
    public required IReadOnlyList<ChoiceReason> Reasons { get; init; }
}
