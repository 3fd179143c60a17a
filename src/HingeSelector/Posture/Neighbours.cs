using HingeSelector.Body;

namespace HingeSelector.Posture;

/// <summary>The positions around one: each segment and each parameter moved to both its ends, one at a time. Solved once, read for every joint.</summary>
internal sealed class Neighbours
{
    private readonly (Pose Low, Pose High)[] _segments = new (Pose, Pose)[Sensitivity.Segments.Count];
    private readonly (Pose Low, Pose High)[] _parameters;

    public Neighbours(in PoseInput input, Segments segments, PullGeometry pull, ModelParameters parameters)
    {
        for (var i = 0; i < _segments.Length; i++)
        {
            var error = segments[Sensitivity.Segments[i]].StandardError.Metres;
            var high = input;
            Sensitivity.Field(ref high, Sensitivity.Segments[i]) += error;
            var low = input;
            Sensitivity.Field(ref low, Sensitivity.Segments[i]) -= error;
            _segments[i] = (PoseKernel.Solve(low), PoseKernel.Solve(high));
        }
        var ids = Sensitivity.ParametersFor(pull);
        _parameters = new (Pose, Pose)[ids.Count];
        for (var i = 0; i < ids.Count; i++)
        {
            var range = parameters.RangeOf(ids[i]);
            var high = input;
            Sensitivity.Set(ref high, ids[i], range.High);
            var low = input;
            Sensitivity.Set(ref low, ids[i], range.Low);
            _parameters[i] = (PoseKernel.Solve(low), PoseKernel.Solve(high));
        }
    }

    /// <summary>One pair a segment, in the order of <see cref="Sensitivity.Segments"/>: a standard error shorter, a standard error longer.</summary>
    public ReadOnlySpan<(Pose Low, Pose High)> Segments => _segments;

    /// <summary>One pair a parameter of the pull: at the low and at the high end of its range.</summary>
    public ReadOnlySpan<(Pose Low, Pose High)> Parameters => _parameters;
}
