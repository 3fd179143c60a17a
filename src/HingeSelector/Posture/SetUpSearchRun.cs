using HingeSelector.Body;
using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>One search over heights and grips for an athlete whose segments are known.</summary>
internal sealed class SetUpSearchRun
{
    /// <summary>Lengths closer than this are the same length written twice (metres).</summary>
    public const double SameLength = 1e-6;

    private readonly Segments _segments;
    private readonly PullGeometry _pull;
    private readonly SetUpRequest _request;
    private readonly ModelParameters _parameters;
    private readonly RangeOfMotion _ranges;
    private readonly MarginFinder _finder;
    private readonly List<ChoiceReason> _reasons = [];
    private readonly int _floor;

    public SetUpSearchRun(Segments segments, RangeOfMotion ranges, PullGeometry pull, SetUpRequest request, ModelParameters parameters)
    {
        _segments = segments;
        _ranges = ranges;
        _pull = pull;
        _request = request;
        _parameters = parameters;
        _finder = new MarginFinder(segments, ranges, pull, parameters);
        _floor = LowestAllowed();
    }

    private sealed record Try(SetUp SetUp, Pose Pose, Fit Fit);

    public SetUpChoice Choose()
    {
        var (grip, height, tries) = Search();
        var chosen = tries[height];
        var held = HeldFor(chosen.SetUp);
        var computedLowest = _finder.MeasuresHip ? LowestFitting(tries) : null;
        if (held is not null)
            (height, chosen) = ApplyHeld(held, height, tries);
        Explain(chosen);

        // A held height is a sight of the real thing: from there upwards it counts as fitting.
        var seen = held is not null && chosen.SetUp.HandHeight.Metres >= held.Height.Metres - SameLength;
        var acrossGrips = new List<Try>();
        foreach (var one in _request.Grips)
            acrossGrips.Add(At(_request.Heights[height], one));
        return new SetUpChoice
        {
            FirstTry = chosen.SetUp,
            Outcome = PostureSolver.Outcome(chosen.Pose, _segments, chosen.SetUp, _parameters),
            Margins = _finder.Find(chosen.SetUp),
            Fit = seen ? Fit.Fits : chosen.Fit,
            ComputedFit = chosen.Fit,
            Heights = Band(_request.Heights, tries, height),
            Grips = Band(_request.Grips, acrossGrips, grip),
            ComputedLowest = computedLowest is { } lowest ? _request.Heights[lowest] : null,
            Held = held,
            Reasons = _reasons,
        };
    }

    /// <summary>Grips in the order in which they are wanted; for each, heights from below. The grip makes the variant, so it goes first.</summary>
    private (int Grip, int Height, List<Try> Tries) Search()
    {
        var standard = IndexOf(_request.Grips, SetUpSearch.Nearest(_request.Grips, _request.StandardGrip));
        var count = _request.Grips.Count;
        IEnumerable<int> order = _request.Grip switch
        {
            GripRequest.NarrowestThatFits => Enumerable.Range(0, count),
            GripRequest.WidestThatFits => Enumerable.Range(0, count).Reverse(),
            _ => [standard],
        };
        // Without a hip range nothing can be searched for: hands and feet stay where the variant has them.
        if (!_finder.MeasuresHip)
            order = [standard];

        (int Grip, int Height, List<Try> Tries)? best = null;
        var most = double.NegativeInfinity;
        foreach (var grip in order)
        {
            var tries = new List<Try>();
            foreach (var one in _request.Heights)
                tries.Add(At(one, _request.Grips[grip]));
            if (!_finder.MeasuresHip || (_request.Height.Kind == HeightRequestKind.Standard && _request.Grip == GripRequest.Standard))
                return (grip, _floor, tries);
            var height = _request.Height.Kind == HeightRequestKind.Standard
                ? (tries[_floor].Fit == Fit.DoesNotFit ? null : _floor)
                : LowestFitting(tries);
            if (height is { } found)
                return (grip, found, tries);
            foreach (var h in _request.Height.Kind == HeightRequestKind.Standard ? [_floor] : Enumerable.Range(_floor, tries.Count - _floor))
            {
                var spare = tries[h].Pose.Status == PoseStatus.Solved ? _finder.HipSpareOf(tries[h].Pose) ?? double.NegativeInfinity : double.NegativeInfinity;
                if (best is null || spare > most)
                    (best, most) = ((grip, h, tries), spare);
            }
        }

        Because(ChoiceReason.NothingFits);
        return best!.Value;
    }

    private int LowestAllowed()
    {
        var standard = SetUpSearch.Nearest(_request.Heights, _request.StandardHeight);
        if (Math.Abs(standard.Metres - _request.StandardHeight.Metres) > SameLength)
            Because(ChoiceReason.RoomLacksStandardHeight);
        if (_request.Height.NotBelow is { } notBelow && notBelow > standard)
        {
            standard = SetUpSearch.AtOrAbove(_request.Heights, notBelow, out var tooLow);
            if (tooLow)
                Because(ChoiceReason.RoomTooLow);
        }

        return IndexOf(_request.Heights, standard);
    }

    private void Because(ChoiceReason reason)
    {
        if (!_reasons.Contains(reason))
            _reasons.Add(reason);
    }

    private Try At(Length height, Length grip)
    {
        var (setUp, pose) = SetUpSearch.PlaceAndSolve(_segments, _pull, height, grip, _request.Sole, _parameters);
        return new Try(setUp, pose, _finder.FitOf(pose, setUp));
    }

    private int? LowestFitting(List<Try> tries)
    {
        for (var i = _floor; i < tries.Count; i++)
        {
            if (tries[i].Fit != Fit.DoesNotFit)
                return i;
        }

        return null;
    }

    private HeldHeight? HeldFor(SetUp setUp)
    {
        if (_request.Held is not { } held)
            return null;
        var sameGrip = Math.Abs(held.Grip.Metres - setUp.Grip.Metres) <= _parameters.SameWidthWithin;
        var sameStance = held.Stance is not { } stance || Math.Abs(stance.Metres - setUp.Stance.Metres) <= _parameters.SameWidthWithin;
        if (sameGrip && sameStance)
            return held;
        Because(ChoiceReason.HeldHeightForAnotherSetUp);
        return null;
    }

    private (int Height, Try Chosen) ApplyHeld(HeldHeight held, int computed, List<Try> tries)
    {
        var atLeast = _request.Heights[_floor] > held.Height ? _request.Heights[_floor] : held.Height;
        var height = IndexOf(_request.Heights, SetUpSearch.AtOrAbove(_request.Heights, atLeast, out var tooLow));
        if (tooLow)
            Because(ChoiceReason.RoomTooLow);
        if (height != computed || tries[computed].Fit != Fit.Fits)
            Because(ChoiceReason.HeldHeightDecides);
        _reasons.Remove(ChoiceReason.NothingFits);
        return (height, tries[height]);
    }

    private void Explain(Try chosen)
    {
        var sides = _finder.Sides.Select(s => _ranges[s]).ToList();
        if (!_finder.MeasuresHip)
            Because(ChoiceReason.HipFlexionNotMeasured);
        else if (sides.All(s => s.StraightLegRaise is null) || sides.All(s => s.KneeBentHipFlexion is null))
            Because(ChoiceReason.HipFlexionHalfMeasured);
        if (chosen.Pose.Status == PoseStatus.Solved)
        {
            if (_finder.AbductionIsOpen(chosen.Pose))
                Because(ChoiceReason.AbductionNotMeasured);
            if (MarginFinder.ArmsMeetLegs(chosen.Pose))
                Because(ChoiceReason.ArmsMeetLegs);
        }

        if (chosen.SetUp.Stance.Metres < _pull.Stance.WidthFor(_segments).Metres - SameLength)
            Because(ChoiceReason.StanceNarrowedForGrip);
        if (chosen.SetUp.HandHeight.Metres > SetUpSearch.Nearest(_request.Heights, _request.StandardHeight).Metres + SameLength)
            Because(ChoiceReason.RaisedAboveStandard);
    }

    private LengthBand Band(IReadOnlyList<Length> values, List<Try> tries, int first)
    {
        var runs = Runs(tries.Count, i => tries[i].Fit != Fit.DoesNotFit);
        (int From, int To)? around = null;
        var further = new List<LengthRun>();
        foreach (var run in runs)
        {
            if (run.From <= first && first <= run.To)
                around = run;
            else
                further.Add(Run(values, run));
        }

        if (!_finder.MeasuresHip)
            return new LengthBand(values[first], null, [], null);
        var widened = Widen(tries, first);
        return new LengthBand(values[first], around is { } a ? Run(values, a) : null, further, widened is { } w ? Run(values, w) : null);
    }

    /// <summary>What fits may fit, so errors are worked out only from the edges outwards.</summary>
    private (int From, int To)? Widen(List<Try> tries, int first)
    {
        if (!May(first))
            return null;
        int from = first, to = first;
        while (from > 0 && May(from - 1))
            from--;
        while (to < tries.Count - 1 && May(to + 1))
            to++;
        return (from, to);

        bool May(int i) => tries[i].Fit != Fit.DoesNotFit || _finder.MayFit(tries[i].Pose, tries[i].SetUp);
    }

    private static List<(int From, int To)> Runs(int count, Func<int, bool> holds)
    {
        var runs = new List<(int From, int To)>();
        for (var i = 0; i < count; i++)
        {
            if (!holds(i))
                continue;
            if (runs.Count > 0 && runs[^1].To == i - 1)
                runs[^1] = (runs[^1].From, i);
            else
                runs.Add((i, i));
        }

        return runs;
    }

    private static LengthRun Run(IReadOnlyList<Length> values, (int From, int To) run)
    {
        var lengths = new Length[run.To - run.From + 1];
        for (var i = 0; i < lengths.Length; i++)
            lengths[i] = values[run.From + i];
        return new LengthRun(lengths);
    }

    private static int IndexOf(IReadOnlyList<Length> values, Length value)
    {
        for (var i = 0; i < values.Count; i++)
        {
            if (values[i] == value)
                return i;
        }

        throw new ArgumentException($"{value} is not one of the given lengths.");
    }
}
