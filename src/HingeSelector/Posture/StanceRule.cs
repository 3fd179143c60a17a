using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>How wide a variant stands and how far its feet turn out.</summary>
/// <param name="Basis">What the amount is a measure of.</param>
/// <param name="Amount">Metres, or multiples of biacromial breadth.</param>
/// <param name="TurnOut">Each foot from straight ahead.</param>
public sealed record StanceRule(StanceBasis Basis, double Amount, Angle TurnOut)
{
    /// <summary>Distance between the ankles for one body.</summary>
    public Length WidthFor(Segments segments) => Basis == StanceBasis.Metres
        ? Length.FromMetres(Amount)
        : segments[SegmentName.BiacromialBreadth].Value * Amount;
}
