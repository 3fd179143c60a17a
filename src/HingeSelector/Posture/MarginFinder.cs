using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Finds what each joint has to spare in a set-up, and how far off that may be.</summary>
public sealed partial class MarginFinder
{
    private readonly Segments _segments;
    private readonly RangeOfMotion _ranges;
    private readonly PullGeometry _pull;
    private readonly ModelParameters _parameters;
    private readonly Side[] _sides;

    /// <summary>Takes the athlete and the variant.</summary>
    public MarginFinder(Segments segments, RangeOfMotion ranges, PullGeometry pull, ModelParameters parameters)
    {
        _segments = segments;
        _ranges = ranges;
        _pull = pull;
        _parameters = parameters;
        _sides = pull.Legs == LegUse.Split && ranges.WorkingSide is { } working ? [working] : [Side.Left, Side.Right];
    }

    /// <summary>The margins in a set-up; null when it has no position.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <param name="withErrors">Whether errors are worked out too; they cost a hundred times the values and are left at zero otherwise.</param>
    public Margins? Find(SetUp setUp, bool withErrors = true)
    {
        var input = PoseInput.From(_segments, _pull, setUp, _parameters);
        var pose = PoseKernel.Solve(input);
        if (pose.Status != PoseStatus.Solved)
            return null;
        var shinFree = _pull.Implement != ImplementKind.StraightBar;
        Neighbours? around = null;
        return new Margins(
            HipFlexionSpare(input, pose, withErrors, ref around),
            AngleSpare(input, pose, s => s.HipAbduction, ThighOut, withErrors, ref around),
            RotationSpare(setUp),
            shinFree ? AngleSpare(input, pose, s => s.Dorsiflexion, Dorsiflexion, withErrors, ref around) : null);
    }

    /// <summary>The sides that count: the working one in a split stance, else both.</summary>
    internal IReadOnlyList<Side> Sides => _sides;

    /// <summary>Whether any hip flexion was measured on a side that counts.</summary>
    internal bool MeasuresHip => _sides.Any(s => _ranges[s].StraightLegRaise is not null || _ranges[s].KneeBentHipFlexion is not null);

    /// <summary>Whether a position opens the thighs so far that abduction, not measured, leaves it open.</summary>
    internal bool AbductionIsOpen(in Pose pose)
        => ThighOut(pose) > _parameters.AbductionOpenAbove && _sides.All(s => _ranges[s].HipAbduction is null);

    /// <summary>Whether arms and knees meet, seen from the front.</summary>
    internal static bool ArmsMeetLegs(in Pose pose) => pose.ArmToKnee < -ClearanceTolerance;

    /// <summary>Whether a solved set-up fits, without the cost of its errors.</summary>
    internal Fit FitOf(in Pose pose, SetUp setUp)
    {
        if (pose.Status != PoseStatus.Solved || ArmsMeetLegs(pose))
            return Fit.DoesNotFit;
        var hip = HipSpare(pose, Nominal, out _);
        var abduction = SmallestOf(s => s.HipAbduction, out _) - ThighOut(pose);
        var rotation = SmallestOf(s => s.HipExternalRotation, out _) - PostureSolver.RotationDemand(setUp, _parameters);
        if (hip < 0 || abduction < 0 || rotation < 0)
            return Fit.DoesNotFit;
        return hip is null || AbductionIsOpen(pose) ? Fit.Unknown : Fit.Fits;
    }

    /// <summary>Whether a set-up may fit when the errors of its joints fall its way.</summary>
    internal bool MayFit(in Pose pose, SetUp setUp)
    {
        if (pose.Status != PoseStatus.Solved || ArmsMeetLegs(pose) || Find(setUp) is not { } margins)
            return false;
        return margins.HipFlexion is { MayBeEnough: true }
            && margins.HipAbduction is not { MayBeEnough: false }
            && margins.TurnOut is not { MayBeEnough: false };
    }

    /// <summary>Hip spare degrees of a solved position, without error; null when no hip range was measured.</summary>
    internal double? HipSpareOf(in Pose pose) => HipSpare(pose, Nominal, out _);

    /// <summary>One millimetre: a stance moved to make room for the hands must not fail on the last bit.</summary>
    private const double ClearanceTolerance = 0.001;

    private static double ThighOut(in Pose pose) => double.RadiansToDegrees(Math.Max(0, pose.ThighOut));

    private static double Dorsiflexion(in Pose pose) => double.RadiansToDegrees(pose.Dorsiflexion);

    private double? SmallestOf(Func<SideRange, AngleMeasure?> read, out Side side)
    {
        double? smallest = null;
        side = _sides[0];
        foreach (var s in _sides)
        {
            if (read(_ranges[s]) is { } m && !(m.Value.Degrees >= smallest))
                (smallest, side) = (m.Value.Degrees, s);
        }

        return smallest;
    }

    private Spare? RotationSpare(SetUp setUp)
    {
        if (SmallestOf(s => s.HipExternalRotation, out var side) is not { } available)
            return null;
        var below = _parameters.RangeOf("turn-out-below-knee");
        return new Spare(
            Angle.FromDegrees(available - PostureSolver.RotationDemand(setUp, _parameters)),
            _ranges[side].HipExternalRotation!.Value.StandardError,
            Angle.FromDegrees((below.High - below.Low) / 2 / EvenSpread),
            side);
    }

    private Spare? AngleSpare(in PoseInput input, in Pose pose, Func<SideRange, AngleMeasure?> read, Reading demand, bool withErrors, ref Neighbours? around)
    {
        if (SmallestOf(read, out var side) is not { } available)
            return null;
        if (!withErrors)
            return new Spare(Angle.FromDegrees(available - demand(pose)), default, default, side);
        var own = read(_ranges[side])!.Value.StandardError.Degrees;
        var value = available - demand(pose);
        var (segments, model) = Spread(input, ref around, value, (in Pose p) => available - demand(p));
        return new Spare(
            Angle.FromDegrees(value),
            Angle.FromDegrees(Math.Sqrt((own * own) + segments)),
            Angle.FromDegrees(Math.Sqrt(model)),
            side);
    }
}
