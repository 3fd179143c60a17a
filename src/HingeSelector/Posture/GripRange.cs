using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>The grips of a variant for one body.</summary>
/// <param name="From">The narrowest, between the middle fingers.</param>
/// <param name="To">The widest.</param>
public readonly record struct GripRange(Length From, Length To)
{
    /// <summary>Turns a grip rule into widths, at a hand height and stance.</summary>
    /// <param name="segments">The body.</param>
    /// <param name="pull">The variant; its grip rule is the one that is read.</param>
    /// <param name="setUp">Height, sole, stance and turn-out; its own grip is not used.</param>
    /// <param name="parameters">The model's numbers.</param>
    /// <returns>The range, or null when the rule hangs on the legs and the set-up has no position.</returns>
    public static GripRange? For(Segments segments, PullGeometry pull, SetUp setUp, ModelParameters parameters)
    {
        var rule = pull.Grip;
        switch (rule.Basis)
        {
            case GripBasis.Metres:
                return Ordered(rule.From, rule.To);
            case GripBasis.ElbowToElbow:
                var elbows = segments.Metres(SegmentName.ElbowToElbow);
                return Ordered(rule.From * elbows, rule.To * elbows);
            default:
                if (GripThatJustClears(segments, pull, setUp, parameters) is not { } edge)
                    return null;
                var sign = rule.Basis == GripBasis.OutsideLegs ? 1 : -1;
                return Ordered(edge + (sign * rule.From), edge + (sign * rule.To));
        }
    }

    /// <summary>Grips to try, from the narrowest upwards.</summary>
    /// <param name="step">What the hand can be moved by and found again on the bar.</param>
    public IReadOnlyList<Length> Steps(Length step)
    {
        var grips = new List<Length>();
        for (var i = 0; From + (step * i) <= To + Length.FromMetres(SetUpSearchRun.SameLength); i++)
            grips.Add(From + (step * i));
        return grips;
    }

    private static GripRange Ordered(double a, double b) => new(Length.FromMetres(Math.Min(a, b)), Length.FromMetres(Math.Max(a, b)));

    /// <summary>
    /// The clearance grows with the grip by a share that depends a little on the position, so three secant steps from a
    /// shoulder-wide grip are enough for a tenth of a millimetre.
    /// </summary>
    private static double? GripThatJustClears(Segments segments, PullGeometry pull, SetUp setUp, ModelParameters parameters)
    {
        var input = PoseInput.From(segments, pull, setUp, parameters);
        input.Arms = pull.Grip.Basis == GripBasis.OutsideLegs ? ArmPlacement.OutsideLegs : ArmPlacement.InsideLegs;
        var a = segments.Metres(SegmentName.BiacromialBreadth);
        if (Clearance(input, a) is not { } atA)
            return null;
        var b = input.Arms == ArmPlacement.OutsideLegs ? a - atA : a + atA;
        for (var i = 0; i < 3 && Math.Abs(b - a) > 1e-6; i++)
        {
            if (Clearance(input, b) is not { } atB)
                return null;
            if (atB == atA)
                break;
            (a, atA, b) = (b, atB, b - (atB * (b - a) / (atB - atA)));
        }

        return b;
    }

    private static double? Clearance(PoseInput input, double grip)
    {
        input.Grip = grip;
        var pose = PoseKernel.Solve(input);
        return pose.Status == PoseStatus.Solved ? pose.ArmToKnee : null;
    }
}
