using HingeSelector.Reading;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules;

/// <summary>An example inside a rule, written in full or as a change against one that is.</summary>
/// <param name="Given">Facts of the example that is written in full.</param>
/// <param name="Variant">Index of the variant it is asked for; null when it is about the athlete.</param>
/// <param name="Expect">True for fires, False for does not fire, Open for open.</param>
/// <param name="At">The expectation as written, with its place; for a change the place of the change.</param>
public sealed record RuleExample(YamlMap Given, int? Variant, Truth Expect, YamlScalar At)
{
    /// <summary>Words, readings or findings that the author names as the reason; empty where none is named.</summary>
    public IReadOnlyList<YamlScalar> Because { get; init; } = [];

    /// <summary>Facts that differ from <see cref="Given"/>; null for an example written in full.</summary>
    public YamlMap? Changes { get; init; }

    /// <summary>Whether it is a change against another example, so that what changed is the reason.</summary>
    public bool IsChange => Changes is not null;
}
