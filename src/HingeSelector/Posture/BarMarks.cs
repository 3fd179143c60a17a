using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>What can be seen and felt on a straight bar.</summary>
/// <param name="BetweenSleeves">Length between the inner collars.</param>
/// <param name="BetweenRings">Distance between the two ring marks (810 mm on powerlifting, 910 mm on weightlifting bars); null when there are none.</param>
public sealed record BarMarks(Length BetweenSleeves, Length? BetweenRings)
{
    /// <summary>
    /// Where the middle finger lies, one hand: from the ring mark (positive outside it), from the collar and from the middle
    /// of the bar.
    /// </summary>
    /// <param name="grip">Between the two middle fingers.</param>
    /// <param name="handBreadth">Across the hand; half of it must fit between middle finger and collar.</param>
    public HandPlace Place(Length grip, Length handBreadth)
    {
        var fromMiddle = grip * 0.5;
        var fromCollar = (BetweenSleeves - grip) * 0.5;
        return new HandPlace(fromMiddle, (grip - BetweenRings) * 0.5, fromCollar, fromCollar >= handBreadth * 0.5);
    }
}
