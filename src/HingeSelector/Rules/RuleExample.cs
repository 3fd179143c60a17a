using HingeSelector.Reading;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules;

/// <summary>An example inside a rule.</summary>
/// <param name="Given">Facts as written.</param>
/// <param name="Variant">Index of the variant it is asked for; null when it is about the athlete.</param>
/// <param name="Expect">True for fires, False for does not fire, Open for open.</param>
/// <param name="At">The expectation as written, with its place.</param>
public sealed record RuleExample(YamlMap Given, int? Variant, Truth Expect, YamlScalar At);
