using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;

namespace HingeSelector.Knowledge;

/// <summary>Reads the posture section of a variant.</summary>
internal static class VariantPostureReader
{
    private static readonly string[] _hands = ["bar-ahead-of-shins", "handles-beside", "load-between-feet", "not-modelled"];

    public static VariantPosture? Read(YamlNode? node, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        var map = MapReader.Open(node, "the posture of a variant", bag);
        if (map is null)
            return null;
        var hands = OneOf(map.Required("hands"), "hands", _hands, bag);
        map.Known("because");
        if (hands is null or "not-modelled")
        {
            map.Known("sources");
            map.Finish();
            return null;
        }
        Parse.Sources(map, sources, bag);
        var knees = map.Required("knees");
        var legs = OneOf(map.Required("legs"), "legs", ["both", "split"], bag);
        var stance = Parse.Quantity(map.Required("stance"), "stance", Dimension.Length, bag);
        var turnOut = Parse.Quantity(map.Required("turn-out"), "turn-out", Dimension.Angle, bag);
        var arms = OneOf(map.Required("arms"), "arms", ["outside-the-knees", "inside-the-knees"], bag);
        var grip = Grip(map.Required("grip"), bag);
        var narrowest = Grip(map.Scalar("narrowest-grip"), bag) ?? grip;
        var widest = Grip(map.Scalar("widest-grip"), bag) ?? grip;
        var height = Height(map.Required("height"), bag);
        var soft = knees is null or { Value: "free" } ? null : Parse.Quantity(knees, "knees", Dimension.Angle, bag);
        map.Finish();
        if (legs is null || stance is null || turnOut is null || arms is null || grip is null || height is null)
            return null;
        return new VariantPosture(hands, soft, legs == "split", stance.Value, turnOut.Value, arms == "inside-the-knees", grip.Value, narrowest!.Value, widest!.Value, height.Value);
    }

    private static GripRule? Grip(YamlScalar? text, DiagnosticBag bag)
    {
        const string share = " of elbow to elbow";
        if (text is null)
            return null;
        if (text.Value == "outside the legs")
            return new GripRule(GripRuleKind.OutsideTheLegs, 0);
        if (text.Value == "inside the legs")
            return new GripRule(GripRuleKind.InsideTheLegs, 0);
        if (text.Value.EndsWith(share, StringComparison.Ordinal))
        {
            return Parse.Quantity(text with { Value = text.Value[..^share.Length] }, "grip", Dimension.Share, bag) is { } percent
                ? new GripRule(GripRuleKind.ElbowToElbow, percent / 100)
                : null;
        }
        return Parse.Quantity(text, "grip", Dimension.Length, bag) is { } metres ? new GripRule(GripRuleKind.Absolute, metres) : null;
    }

    private static HeightRule? Height(YamlScalar? text, DiagnosticBag bag)
    {
        const string share = " of knee height";
        switch (text?.Value)
        {
            case null:
                return null;
            case "floor":
                return new HeightRule(HeightRuleKind.Floor, 0);
            case "low handle":
                return new HeightRule(HeightRuleKind.LowHandle, 0);
            case "high handle":
                return new HeightRule(HeightRuleKind.HighHandle, 0);
        }
        if (text.Value.EndsWith(share, StringComparison.Ordinal))
        {
            return Parse.Quantity(text with { Value = text.Value[..^share.Length] }, "height", Dimension.Share, bag) is { } percent
                ? new HeightRule(HeightRuleKind.KneeHeight, percent / 100)
                : null;
        }
        return Parse.Quantity(text, "height", Dimension.Length, bag) is { } metres ? new HeightRule(HeightRuleKind.Absolute, metres) : null;
    }

    private static string? OneOf(YamlScalar? text, string key, string[] values, DiagnosticBag bag)
    {
        if (text is null || values.Contains(text.Value, StringComparer.Ordinal))
            return text?.Value;
        bag.Add(Problems.UnknownValue(text.Span, text.Value, key, values));
        return null;
    }
}
