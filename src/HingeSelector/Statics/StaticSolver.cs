using HingeSelector.Body;
using HingeSelector.Posture;
using HingeSelector.Quantities;

namespace HingeSelector.Statics;

/// <summary>Works out the moments of a still start position. Quasi-static: inertia, air and friction are left out.</summary>
public static class StaticSolver
{
    /// <summary>Standard acceleration of free fall, m/s2; exact by the third General Conference on Weights and Measures, 1901.</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Moments, moment arms and low-back estimate of a position.</summary>
    /// <param name="position">A solved start position.</param>
    /// <param name="segments">The body that it was solved for; gives the wrist.</param>
    /// <param name="bodyMass">Body mass.</param>
    /// <param name="load">Bar and discs, in the hands.</param>
    /// <param name="table">How the body's mass is spread.</param>
    /// <param name="legs">Both legs alike, or a working leg that carries more.</param>
    /// <param name="parameters">The model's numbers.</param>
    public static StaticLoads Solve(
        StartPosition position, Segments segments, Mass bodyMass, Mass load, MassTable table, LegUse legs, ModelParameters parameters)
    {
        var hand = position.Hand.X;
        var armLength = Distance(position.Shoulder, position.Hand);
        var toWrist = armLength == 0 ? 1 : (armLength - segments.Metres(SegmentName.WristToGrip)) / armLength;
        var weights = new Weights(bodyMass.Kilograms * StandardGravity);

        var l5s1 = Along(position.Hip.X, position.Shoulder.X, parameters.L5S1AlongTrunk);
        weights.Add(load.Kilograms * StandardGravity, hand);
        weights.AddPart(2 * table.Arm.Share, Along(position.Shoulder.X, hand, table.Arm.Centre * toWrist));
        weights.AddPart(table.TrunkAndHead.Share, Along(position.Hip.X, position.Shoulder.X, table.TrunkAndHead.Centre));
        var aboveHip = weights;

        var aboveDisc = weights;
        aboveDisc.AddPart(-table.Pelvis.Share, Along(position.Hip.X, position.Shoulder.X, table.Pelvis.Centre));

        weights.AddPart(2 * table.Thigh.Share, Along(position.Hip.X, position.Knee.X, table.Thigh.Centre));
        var aboveKnee = weights;
        weights.AddPart(2 * table.Shank.Share, Along(position.Knee.X, position.Ankle.X, table.Shank.Centre));
        var aboveAnkle = weights;
        weights.AddPart(2 * table.Foot.Share, Along(position.Ankle.X, position.Ball.X, table.Foot.Centre));

        var atDisc = aboveDisc.About(l5s1);
        return new StaticLoads
        {
            Load = load,
            AnkleArm = Length.FromMetres(hand - position.Ankle.X),
            KneeArm = Length.FromMetres(hand - position.Knee.X),
            HipArm = Length.FromMetres(hand - position.Hip.X),
            L5S1Arm = Length.FromMetres(hand - l5s1),
            Ankle = Moment.FromNewtonMetres(aboveAnkle.About(position.Ankle.X)),
            // Weight behind the knee is what its extensors hold.
            Knee = Moment.FromNewtonMetres(-aboveKnee.About(position.Knee.X)),
            KneeCanBeRead = position.HipAbductionDemand.Degrees <= parameters.AbductionOpenAbove,
            Hip = Moment.FromNewtonMetres(aboveHip.About(position.Hip.X)),
            L5S1 = Moment.FromNewtonMetres(atDisc),
            LegShare = legs == LegUse.Split ? parameters.SplitWorkingShare / 100 : 0.5,
            LowBack = LowBackEstimate.From(
                Moment.FromNewtonMetres(atDisc),
                Force.FromNewtons(aboveDisc.Total),
                Angle.FromDegrees(90) - position.TrunkAboveLevel,
                Length.FromMetres(parameters.ExtensorArm),
                Angle.FromDegrees(parameters.ExtensorAngle)),
            CentreAhead = Length.FromMetres(weights.About(0) / weights.Total),
        };
    }

    private static double Along(double from, double to, double share) => from + ((to - from) * share);

    private static double Distance(Point a, Point b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    /// <summary>A heap of weights: their sum and their moment about the origin.</summary>
    private struct Weights(double bodyWeight)
    {
        public double Total { get; private set; }

        private double _moment;

        public void Add(double newtons, double x)
        {
            Total += newtons;
            _moment += newtons * x;
        }

        public void AddPart(double share, double x) => Add(share * bodyWeight, x);

        public readonly double About(double x) => _moment - (Total * x);
    }
}
