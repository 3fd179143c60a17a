using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>
/// Every adjustable number of the posture and statics model. There are no defaults in code: values, spans, grades and
/// sources stand in <c>rules/model.yaml</c>.
/// </summary>
public sealed class ModelParameters
{
    private readonly Dictionary<string, ParameterValue> _values;

    /// <summary>Takes one value for each of <see cref="Ids"/>.</summary>
    /// <exception cref="ArgumentException">An id is missing or unknown, or a value lies outside its own span; the message lists them.</exception>
    public ModelParameters(IReadOnlyDictionary<string, ParameterValue> values)
    {
        var known = Ids.Select(p => p.Id).ToHashSet();
        var missing = known.Where(id => !values.ContainsKey(id)).Order(StringComparer.Ordinal).ToList();
        var unknown = values.Keys.Where(id => !known.Contains(id)).Order(StringComparer.Ordinal).ToList();
        // Written so that a value that is not a number is caught too.
        var outside = values.Where(p => !(p.Value.Low <= p.Value.Value && p.Value.Value <= p.Value.High)).Select(p => p.Key).Order(StringComparer.Ordinal).ToList();
        if (missing.Count + unknown.Count + outside.Count > 0)
        {
            throw new ArgumentException(
                $"Model parameters missing: {List(missing)}; unknown: {List(unknown)}; value outside its own range: {List(outside)}.", nameof(values));
        }

        _values = new Dictionary<string, ParameterValue>(values);
        // Read once: the solver asks for them a million times.
        ReachAllowance = _values["reach-allowance"].Value;
        TrunkChordFactor = _values["trunk-chord-factor"].Value;
        LumbarShare = _values["lumbar-share"].Value;
        HamstringSlope = _values["hamstring-slope"].Value;
        PelvisShare = _values["pelvis-share"].Value;
        ShoulderDrop = _values["shoulder-drop"].Value;
        ShoulderSpacingRatio = _values["shoulder-spacing-ratio"].Value;
        HipSpacingRatio = _values["hip-spacing-ratio"].Value;
        ShinDepth = _values["shin-depth"].Value;
        BarRadius = _values["bar-radius"].Value;
        BarOverFoot = _values["bar-over-foot"].Value;
        ShoulderAhead = _values["shoulder-ahead"].Value;
        ShoulderAheadFree = _values["shoulder-ahead-free"].Value;
        ShankLeanLimit = _values["shank-lean-limit"].Value;
        FreeShankLean = _values["free-shank-lean"].Value;
        HandleLine = _values["handle-line"].Value;
        KneeArmDistance = _values["knee-arm-distance"].Value;
        NarrowestStance = _values["narrowest-stance"].Value;
        FoldLimit = _values["fold-limit"].Value;
        LowestModelledBar = _values["lowest-modelled-bar"].Value;
        TurnOutBelowKnee = _values["turn-out-below-knee"].Value;
        KneeToWallSlope = _values["knee-to-wall-slope"].Value;
        AbductionOpenAbove = _values["abduction-open-above"].Value;
        CautiousHeight = _values["cautious-height"].Value;
        L5S1AlongTrunk = _values["l5s1-along-trunk"].Value;
        ExtensorArm = _values["extensor-arm"].Value;
        ExtensorAngle = _values["extensor-angle"].Value;
        SplitWorkingShare = _values["split-working-share"].Value;
        TypicalShoulderBreadth = _values["typical-shoulder-breadth"].Value;
        SameWidthWithin = _values["same-width-within"].Value;
        MeasuredSegmentError = Length.FromMetres(_values["measured-segment-error"].Value);
    }

    /// <summary>Every parameter, in the order in which the page on the model lists them.</summary>
    public static IReadOnlyList<ParameterId> Ids { get; } =
    [
        new("reach-allowance", Dimension.Length),
        new("trunk-chord-factor", Dimension.None),
        new("lumbar-share", Dimension.Angle),
        new("hamstring-slope", Dimension.None),
        new("pelvis-share", Dimension.Share),
        new("shoulder-drop", Dimension.Length),
        new("shoulder-spacing-ratio", Dimension.None),
        new("hip-spacing-ratio", Dimension.None),
        new("shin-depth", Dimension.Length),
        new("bar-radius", Dimension.Length),
        new("bar-over-foot", Dimension.None),
        new("shoulder-ahead", Dimension.Length),
        new("shoulder-ahead-free", Dimension.Length),
        new("shank-lean-limit", Dimension.Angle),
        new("free-shank-lean", Dimension.Angle),
        new("handle-line", Dimension.None),
        new("knee-arm-distance", Dimension.Length),
        new("narrowest-stance", Dimension.Length),
        new("fold-limit", Dimension.Angle),
        new("lowest-modelled-bar", Dimension.Length),
        new("turn-out-below-knee", Dimension.Angle),
        new("knee-to-wall-slope", Dimension.None),
        new("abduction-open-above", Dimension.Angle),
        new("cautious-height", Dimension.Length),
        new("typical-shoulder-breadth", Dimension.Length),
        new("same-width-within", Dimension.Length),
        new("measured-segment-error", Dimension.Length),
        new("l5s1-along-trunk", Dimension.None),
        new("extensor-arm", Dimension.Length),
        new("extensor-angle", Dimension.Angle),
        new("split-working-share", Dimension.Share),
    ];

    /// <summary>Length that lowered and forward-drawn shoulder blades add to the arm, m.</summary>
    public double ReachAllowance { get; }

    /// <summary>Straight line from hip to shoulder in the pull, as a part of that line standing tall.</summary>
    public double TrunkChordFactor { get; }

    /// <summary>Part of the bend between trunk and thigh that the low back supplies, deg.</summary>
    public double LumbarShare { get; }

    /// <summary>Degrees of hip flexion that one degree of knee flexion gives back to the hamstrings.</summary>
    public double HamstringSlope { get; }

    /// <summary>Part of a measured hip flexion that is the pelvis tilting when nobody held it, %.</summary>
    public double PelvisShare { get; }

    /// <summary>Centre of the shoulder joint below the tip of the shoulder, m.</summary>
    public double ShoulderDrop { get; }

    /// <summary>Distance between the shoulder joints as a part of biacromial breadth.</summary>
    public double ShoulderSpacingRatio { get; }

    /// <summary>Distance between the hip joints as a part of hip breadth.</summary>
    public double HipSpacingRatio { get; }

    /// <summary>From the line ankle to knee forward to the skin of the shin, m.</summary>
    public double ShinDepth { get; }

    /// <summary>Half the thickness of the bar, m.</summary>
    public double BarRadius { get; }

    /// <summary>Where the bar lies over the foot, as a part of foot length from the heel.</summary>
    public double BarOverFoot { get; }

    /// <summary>Shoulder joint ahead of a straight bar at the start, m.</summary>
    public double ShoulderAhead { get; }

    /// <summary>Shoulder joint ahead of handles beside or between the feet, m.</summary>
    public double ShoulderAheadFree { get; }

    /// <summary>Most that the shank leans forward in a straight-bar pull, deg; lower bars then lie free of the shin.</summary>
    public double ShankLeanLimit { get; }

    /// <summary>Lean of the shank over the foot where no bar stands in the way, deg.</summary>
    public double FreeShankLean { get; }

    /// <summary>Where handles hang, from the ankle (0) to the middle of the foot (1).</summary>
    public double HandleLine { get; }

    /// <summary>Smallest distance, seen from the front, of the centre lines of arm and knee, m.</summary>
    public double KneeArmDistance { get; }

    /// <summary>Narrowest stance to which the feet are brought to make room for the hands, m.</summary>
    public double NarrowestStance { get; }

    /// <summary>Bend between trunk and thigh at which the belly meets the thighs, deg.</summary>
    public double FoldLimit { get; }

    /// <summary>Lowest bar above the sole that the model places, m; below it the foot is in the way.</summary>
    public double LowestModelledBar { get; }

    /// <summary>Part of the foot's turn-out that the leg below the knee supplies, deg.</summary>
    public double TurnOutBelowKnee { get; }

    /// <summary>Ankle dorsiflexion per centimetre of the knee-to-wall distance, deg.</summary>
    public double KneeToWallSlope { get; }

    /// <summary>Hip abduction that is taken as given without a measurement, deg.</summary>
    public double AbductionOpenAbove { get; }

    /// <summary>Hand height of a first step when neither segments nor a held height are known, m.</summary>
    public double CautiousHeight { get; }

    /// <summary>Biacromial breadth of a first stance when neither segments nor a held stance are known, m.</summary>
    public double TypicalShoulderBreadth { get; }

    /// <summary>Two grips or stances that differ by no more than this are the same one, m.</summary>
    public double SameWidthWithin { get; }

    /// <summary>Standard error of a segment measured with a tape.</summary>
    public Length MeasuredSegmentError { get; }

    /// <summary>Lowest disc of the spine on the line hip to shoulder, as a part of it from the hip.</summary>
    public double L5S1AlongTrunk { get; }

    /// <summary>Lever arm of the back extensors at the lowest disc, m.</summary>
    public double ExtensorArm { get; }

    /// <summary>Line of pull of the back extensors behind the compression axis, deg.</summary>
    public double ExtensorAngle { get; }

    /// <summary>Part of the weight that the working leg carries in a split stance, %.</summary>
    public double SplitWorkingShare { get; }

    /// <summary>The value of a parameter by its id, in the base unit of its dimension.</summary>
    /// <exception cref="KeyNotFoundException">No parameter has that id.</exception>
    public double this[string id] => _values[id].Value;

    /// <summary>A parameter with its span.</summary>
    /// <exception cref="KeyNotFoundException">No parameter has that id.</exception>
    public ParameterValue RangeOf(string id) => _values[id];

    /// <summary>The same parameters with one value changed; the span widens to hold it.</summary>
    /// <exception cref="KeyNotFoundException">No parameter has that id.</exception>
    public ModelParameters With(string id, double value)
    {
        var old = _values[id];
        return new ModelParameters(new Dictionary<string, ParameterValue>(_values)
        {
            [id] = new ParameterValue(value, Math.Min(old.Low, value), Math.Max(old.High, value)),
        });
    }

    private static string List(List<string> ids) => ids.Count == 0 ? "none" : string.Join(", ", ids);
}
