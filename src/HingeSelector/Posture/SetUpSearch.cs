using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>
/// Chooses bar height and grip for one athlete and one variant from what the room can make. Heights are scanned upwards, never
/// bisected: raising the bar straightens the knee and gives up hamstring length, so spare degrees are not monotone.
/// </summary>
public static class SetUpSearch
{
    /// <summary>The choice. Never fails: without segments it is the held height, or a raised first step that says why.</summary>
    /// <exception cref="ArgumentException">The request has no heights or no grips, or they are not ascending.</exception>
    public static SetUpChoice Choose(BodyEstimate body, RangeOfMotion ranges, PullGeometry pull, SetUpRequest request, ModelParameters parameters)
    {
        RequireAscending(request.Heights, "heights");
        RequireAscending(request.Grips, "grips");
        return body is KnownBody known
            ? new SetUpSearchRun(known.Segments, ranges, pull, request, parameters).Choose()
            : WithoutBody(((BodyNotKnown)body).Reason, pull, request, parameters);
    }

    /// <summary>
    /// Hands at a height and grip, feet as the variant stands: the stance follows the grip, so feet come closer when arms
    /// that pass outside the knees would meet them, but never closer than the narrowest stance.
    /// </summary>
    public static SetUp Place(Segments segments, PullGeometry pull, Length height, Length grip, Length sole, ModelParameters parameters)
        => PlaceAndSolve(segments, pull, height, grip, sole, parameters).SetUp;

    internal static (SetUp SetUp, Pose Pose) PlaceAndSolve(
        Segments segments, PullGeometry pull, Length height, Length grip, Length sole, ModelParameters parameters)
    {
        var width = pull.Stance.WidthFor(segments);
        var setUp = new SetUp(height, sole, grip, width, pull.Stance.TurnOut);
        var input = PoseInput.From(segments, pull, setUp, parameters);
        var pose = PoseKernel.Solve(input);
        if (pull.Arms == ArmPlacement.InsideLegs || pose.Status != PoseStatus.Solved || pose.ArmToKnee >= 0)
            return (setUp, pose);
        var closer = Math.Max(Math.Min(width.Metres, parameters.NarrowestStance), width.Metres + (2 * pose.ArmToKnee));
        input.Stance = closer;
        return (setUp with { Stance = Length.FromMetres(closer) }, PoseKernel.Solve(input));
    }

    private static SetUpChoice WithoutBody(BodyUnknownReason reason, PullGeometry pull, SetUpRequest request, ModelParameters parameters)
    {
        var wanted = request.Held?.Height ?? Length.FromMetres(Math.Max(parameters.CautiousHeight, request.StandardHeight.Metres));
        if (request.Height.NotBelow is { } floor && floor > wanted)
            wanted = floor;
        var height = AtOrAbove(request.Heights, wanted, out var tooLow);
        var grip = request.Held?.Grip ?? Nearest(request.Grips, request.StandardGrip);
        var stance = request.Held?.Stance ?? Length.FromMetres(
            pull.Stance.Amount * (pull.Stance.Basis == StanceBasis.Metres ? 1 : parameters.TypicalShoulderBreadth));
        var reasons = new List<ChoiceReason> { ChoiceReason.BodyNotKnown };
        if (request.Held is not null)
            reasons.Add(ChoiceReason.HeldHeightDecides);
        if (tooLow)
            reasons.Add(ChoiceReason.RoomTooLow);
        return new SetUpChoice
        {
            FirstTry = new SetUp(height, request.Sole, grip, stance, pull.Stance.TurnOut),
            Outcome = null,
            Margins = null,
            Fit = request.Held is null || tooLow ? Fit.Unknown : Fit.Fits,
            ComputedFit = Fit.Unknown,
            Heights = new LengthBand(height, null, [], null),
            Grips = new LengthBand(grip, null, [], null),
            ComputedLowest = null,
            Held = request.Held,
            BodyUnknown = reason,
            Reasons = reasons,
        };
    }

    internal static Length Nearest(IReadOnlyList<Length> values, Length wanted)
    {
        var nearest = values[0];
        foreach (var value in values)
        {
            if (Math.Abs(value.Metres - wanted.Metres) < Math.Abs(nearest.Metres - wanted.Metres))
                nearest = value;
        }

        return nearest;
    }

    internal static Length AtOrAbove(IReadOnlyList<Length> values, Length wanted, out bool tooLow)
    {
        foreach (var value in values)
        {
            if (value.Metres >= wanted.Metres - SetUpSearchRun.SameLength)
            {
                tooLow = false;
                return value;
            }
        }

        tooLow = true;
        return values[^1];
    }

    private static void RequireAscending(IReadOnlyList<Length> values, string what)
    {
        if (values.Count == 0)
            throw new ArgumentException($"A set-up search needs {what} to choose from.");
        for (var i = 1; i < values.Count; i++)
        {
            if (values[i] <= values[i - 1])
                throw new ArgumentException($"The {what} of a set-up search must ascend.");
        }
    }
}
