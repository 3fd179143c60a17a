using HingeSelector.Body;
using HingeSelector.Knowledge;
using HingeSelector.Posture;
using HingeSelector.Quantities;

namespace HingeSelector.Candidates;

/// <summary>Translates a variant's file into the words of the posture model.</summary>
internal static class PullOf
{
    /// <summary>The pull with its standard stance.</summary>
    public static PullGeometry Variant(VariantPosture posture) => new()
    {
        Implement = posture.Hands switch
        {
            "bar-ahead-of-shins" => ImplementKind.StraightBar,
            "handles-beside" => ImplementKind.HandlesBeside,
            _ => ImplementKind.LoadBetweenFeet,
        },
        Legs = posture.Split ? LegUse.Split : LegUse.Both,
        Arms = posture.ArmsInside ? ArmPlacement.InsideLegs : ArmPlacement.OutsideLegs,
        Knees = posture.SoftKnees is { } degrees ? KneeRule.Kept(Angle.FromDegrees(degrees)) : KneeRule.Free,
        Stance = new StanceRule(StanceBasis.Metres, posture.Stance, Angle.FromDegrees(posture.TurnOut)),
        Grip = Rule(posture.Grip),
    };

    /// <summary>The grips that may be tried, in steps, with the standard one among them.</summary>
    public static (IReadOnlyList<Length> All, Length Standard) Grips(VariantPosture posture, Segments? segments, PullGeometry pull, SetUp at, double? widest, Assumptions assumed, ModelParameters parameters)
    {
        var standard = Width(posture.Grip, segments, pull, at, assumed, parameters);
        var low = Math.Min(standard, Width(posture.NarrowestGrip, segments, pull, at, assumed, parameters));
        var high = Math.Max(standard, Width(posture.WidestGrip, segments, pull, at, assumed, parameters));
        if (widest is { } cap)
        {
            high = Math.Max(low, Math.Min(high, cap));
            standard = Math.Clamp(standard, low, high);
        }
        var widths = new List<double> { standard };
        for (var width = standard - assumed.GripStep; width >= low - 1e-9; width -= assumed.GripStep)
            widths.Add(width);
        for (var width = standard + assumed.GripStep; width <= high + 1e-9; width += assumed.GripStep)
            widths.Add(width);
        widths.Sort();
        return (widths.ConvertAll(Length.FromMetres), Length.FromMetres(standard));
    }

    private static double Width(Knowledge.GripRule rule, Segments? segments, PullGeometry pull, SetUp at, Assumptions assumed, ModelParameters parameters)
    {
        // Without a body a rule that hangs on it falls back on the width of the stance: hands beside the legs.
        if (rule.Kind == GripRuleKind.Absolute)
            return rule.Value;
        if (segments is null && rule.Kind == GripRuleKind.ElbowToElbow)
            return rule.Value * assumed.ElbowToElbow;
        if (segments is null)
            return at.Stance.Metres + (parameters.KneeArmDistance * 2);
        return GripRange.For(segments, pull with { Grip = Rule(rule) }, at, parameters)?.From.Metres ?? at.Stance.Metres + (parameters.KneeArmDistance * 2);
    }

    private static Posture.GripRule Rule(Knowledge.GripRule rule) => rule.Kind switch
    {
        GripRuleKind.OutsideTheLegs => new Posture.GripRule(GripBasis.OutsideLegs, 0, 0),
        GripRuleKind.InsideTheLegs => new Posture.GripRule(GripBasis.InsideLegs, 0, 0),
        GripRuleKind.ElbowToElbow => new Posture.GripRule(GripBasis.ElbowToElbow, rule.Value, rule.Value),
        _ => new Posture.GripRule(GripBasis.Metres, rule.Value, rule.Value),
    };
}
