using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Reading;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads the items under <c>tries</c>: an example in full, and the changes against it that stand below.</summary>
public sealed class ExampleReader(IReadOnlyList<Variant> variants, DiagnosticBag bag)
{
    /// <summary>The value of a fact that is taken away.</summary>
    public const string NotMeasured = "not measured";

    /// <summary>Keys of changes against facts, with what the rule does then.</summary>
    public static IReadOnlyList<(string Key, Truth Expect)> WithKeys { get; } = [("also with", Truth.True), ("not with", Truth.False), ("open with", Truth.Open)];

    /// <summary>The key of facts that are taken away.</summary>
    public const string WithoutKey = "open without";

    /// <summary>The key of the variant, in an example and in a change of several facts.</summary>
    public const string ForKey = "for";

    /// <summary>Keys of other variants, with what the rule does then.</summary>
    public static IReadOnlyList<(string Key, Truth Expect)> ForKeys { get; } = [("also for", Truth.True), ("not for", Truth.False)];

    private static readonly IReadOnlyDictionary<string, Truth> _expectations = new Dictionary<string, Truth>(StringComparer.Ordinal)
    {
        ["fires"] = Truth.True,
        ["does not fire"] = Truth.False,
        ["open"] = Truth.Open,
    };

    /// <summary>Reads one item: the example in full first, its changes after it.</summary>
    public IReadOnlyList<RuleExample> Read(YamlNode node)
    {
        var map = MapReader.Open(node, "an example", bag);
        if (map is null)
            return [];
        var given = map.Node("given") as YamlMap ?? new YamlMap([], map.Span);
        var variantText = map.Scalar(ForKey);
        var expect = map.Required("expect");
        var because = map.Scalars("because");
        var variant = variantText is null ? null : Variant(variantText, ForKey);
        Truth? truth = expect is null ? null : Expectation(expect);
        var changes = ReadChanges(map, given, variant).ToList();
        map.Finish();
        if (expect is null || truth is null)
            return [];
        if (truth == Truth.True && because.Count > 0)
            bag.Add(Problems.ReasonForFiring(because[0].Span));
        // A change is told against what fires: then the change alone is the reason.
        if (truth != Truth.True && changes.Count > 0)
            bag.Add(Problems.ChangeOfWhatDoesNotFire(changes[0].At.Span));
        return [new RuleExample(given, variant, truth.Value, expect) { Because = because }, .. changes];
    }

    private Truth? Expectation(YamlScalar text)
    {
        if (_expectations.TryGetValue(text.Value, out var truth))
            return truth;
        bag.Add(Problems.UnknownValue(text.Span, text.Value, "expect", [.. _expectations.Keys]));
        return null;
    }

    private int? Variant(YamlScalar text, string key)
    {
        foreach (var variant in variants)
        {
            if (variant.Id == text.Value)
                return variant.Index;
        }
        bag.Add(Problems.UnknownValue(text.Span, text.Value, key, [.. variants.Select(v => v.Id)]));
        return null;
    }

    private RuleExample ReadChange(YamlMap given, int? variant, string key, Truth expect, YamlMap changes)
    {
        var at = new YamlScalar(key, false, changes.Entries[0].Key.Span);
        if (changes.Find(ForKey) is not YamlScalar other)
            return new RuleExample(given, variant, expect, at) { Changes = changes };
        var facts = changes with { Entries = [.. changes.Entries.Where(e => e.Key.Value != ForKey)] };
        return new RuleExample(given, Variant(other, ForKey), expect, at) { Changes = facts };
    }

    private IEnumerable<RuleExample> ReadChanges(MapReader map, YamlMap given, int? variant)
    {
        foreach (var (key, expect) in WithKeys)
        {
            foreach (var item in map.List(key))
            {
                if (item is YamlMap { Entries.Count: > 0 } changes)
                    yield return ReadChange(given, variant, key, expect, changes);
                else
                    bag.Add(Problems.WrongShape(item.Span, $"An item of '{key}'", "a fact with its value, such as 'age: 17 years'", item.KindName));
            }
        }
        foreach (var name in map.Scalars(WithoutKey))
        {
            var gone = new YamlMap([new(name, name with { Value = NotMeasured })], name.Span);
            yield return new RuleExample(given, variant, Truth.Open, new YamlScalar(WithoutKey, false, name.Span)) { Changes = gone };
        }
        foreach (var (key, expect) in ForKeys)
        {
            foreach (var name in map.Scalars(key))
            {
                if (Variant(name, key) is { } other)
                    yield return new RuleExample(given, other, expect, new YamlScalar(key, false, name.Span)) { Changes = new YamlMap([], name.Span) };
            }
        }
    }
}
