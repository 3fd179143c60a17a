using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>The errors of the margins.</summary>
public sealed partial class MarginFinder
{
    /// <summary>Half the width of an even spread is this many of its standard deviations (square root of three).</summary>
    private const double EvenSpread = 1.7320508075688772;

    /// <summary>Reads one angle off a position.</summary>
    private delegate double Reading(in Pose pose);

    /// <summary>The hip's own numbers in one try: those of the model, or one of them changed.</summary>
    private readonly record struct HipTry(double LumbarShare, double Slope, double PelvisShare, double RaiseShift, double BentShift, Side? Only);

    private HipTry Nominal => new(_parameters.LumbarShare, _parameters.HamstringSlope, _parameters.PelvisShare, 0, 0, null);

    /// <summary>The span of hip spare degrees over every corner of the model's four leading parameters; null when unmeasured or unsolved.</summary>
    /// <remarks>
    /// Demand moves one way with reach and with chord, but spare degrees turn in chord (a shorter chord bends the knee and so
    /// frees the hamstrings): both ends and the middle of chord, both ends of the other three.
    /// </remarks>
    public (Angle Low, Angle High)? HipEnvelope(SetUp setUp)
    {
        var input = PoseInput.From(_segments, _pull, setUp, _parameters);
        var reach = _parameters.RangeOf("reach-allowance");
        var chord = _parameters.RangeOf("trunk-chord-factor");
        var lumbar = _parameters.RangeOf("lumbar-share");
        var slope = _parameters.RangeOf("hamstring-slope");
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var r in (double[])[reach.Low, reach.High])
        {
            foreach (var c in (double[])[chord.Low, (chord.Low + chord.High) / 2, chord.High])
            {
                input.Reach = r;
                input.Chord = c;
                var pose = PoseKernel.Solve(input);
                if (pose.Status != PoseStatus.Solved)
                    return null;
                // More lumbar share and more slope both leave more to spare.
                var worst = HipSpare(pose, Nominal with { LumbarShare = lumbar.Low, Slope = slope.Low }, out _);
                var best = HipSpare(pose, Nominal with { LumbarShare = lumbar.High, Slope = slope.High }, out _);
                if (worst is null || best is null)
                    return null;
                low = Math.Min(low, worst.Value);
                high = Math.Max(high, best.Value);
            }
        }

        return (Angle.FromDegrees(low), Angle.FromDegrees(high));
    }

    private double? HipSpare(in Pose pose, HipTry attempt, out Side side)
    {
        double? smallest = null;
        side = _sides[0];
        var knee = double.RadiansToDegrees(pose.KneeFlexion);
        foreach (var s in _sides)
        {
            if (attempt.Only is { } only && only != s)
                continue;
            var available = _ranges[s].HipFlexion(knee, attempt.Slope, attempt.PelvisShare, attempt.RaiseShift, attempt.BentShift);
            if (available is { } a && !(a >= smallest))
                (smallest, side) = (a, s);
        }

        return smallest - pose.HipDemand(attempt.LumbarShare);
    }

    private Spare? HipFlexionSpare(in PoseInput input, Pose pose, bool withErrors, ref Neighbours? around)
    {
        if (HipSpare(pose, Nominal, out var side) is not { } value)
            return null;
        if (!withErrors)
            return new Spare(Angle.FromDegrees(value), default, default, side);
        var here = Nominal with { Only = side };
        var (measuring, model) = Spread(input, ref around, value, (in Pose p) => HipSpare(p, here, out _)!.Value);
        var raise = _ranges[side].StraightLegRaise?.StandardError.Degrees ?? 0;
        var bent = _ranges[side].KneeBentHipFlexion?.StandardError.Degrees ?? 0;
        measuring += Half(here with { RaiseShift = raise }, here with { RaiseShift = -raise })
            + Half(here with { BentShift = bent }, here with { BentShift = -bent });
        var lumbar = _parameters.RangeOf("lumbar-share");
        var slope = _parameters.RangeOf("hamstring-slope");
        var pelvis = _parameters.RangeOf("pelvis-share");
        model += (Half(here with { LumbarShare = lumbar.Low }, here with { LumbarShare = lumbar.High })
            + Half(here with { Slope = slope.Low }, here with { Slope = slope.High })
            + Half(here with { PelvisShare = pelvis.Low }, here with { PelvisShare = pelvis.High })) / (EvenSpread * EvenSpread);
        return new Spare(Angle.FromDegrees(value), Angle.FromDegrees(Math.Sqrt(measuring)), Angle.FromDegrees(Math.Sqrt(model)), side);

        double Half(HipTry a, HipTry b)
        {
            var half = (HipSpare(pose, a, out _)!.Value - HipSpare(pose, b, out _)!.Value) / 2;
            return half * half;
        }
    }

    /// <summary>
    /// Variance of a result from segments (with their correlations) and from the posture parameters, each by the change over
    /// its own error or span, so that a kink inside it counts by its share.
    /// </summary>
    private (double Segments, double Model) Spread(in PoseInput input, ref Neighbours? around, double nominal, Reading result)
    {
        around ??= new Neighbours(input, _segments, _pull, _parameters);
        Span<double> shifts = stackalloc double[Sensitivity.Segments.Count];
        var segments = 0.0;
        for (var i = 0; i < shifts.Length; i++)
        {
            shifts[i] = HalfChange(around.Segments[i], nominal, result);
            for (var j = 0; j < i; j++)
                segments += 2 * shifts[i] * shifts[j] * _segments.Correlation(Sensitivity.Segments[i], Sensitivity.Segments[j]);
            segments += shifts[i] * shifts[i];
        }

        var model = 0.0;
        foreach (ref readonly var ends in around.Parameters)
        {
            var half = HalfChange(ends, nominal, result) / EvenSpread;
            model += half * half;
        }

        return (Math.Max(0, segments), model);
    }

    /// <summary>Half the change from one end to the other; where an end has no position, the whole change to the other end.</summary>
    private static double HalfChange(in (Pose Low, Pose High) ends, double nominal, Reading result)
        => (ends.Low.Status == PoseStatus.Solved, ends.High.Status == PoseStatus.Solved) switch
        {
            (true, true) => (result(ends.High) - result(ends.Low)) / 2,
            (true, false) => nominal - result(ends.Low),
            (false, true) => result(ends.High) - nominal,
            _ => 0,
        };
}
