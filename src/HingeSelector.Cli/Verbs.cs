using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Explaining;
using HingeSelector.Cli.Frame;
using HingeSelector.Cli.Ruling;
using HingeSelector.Cli.Screening;

namespace HingeSelector.Cli;

/// <summary>Everything that the program can do, one line each.</summary>
public static class Verbs
{
    /// <summary>What a group of verbs is about.</summary>
    public static IReadOnlyDictionary<string, string> Groups { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["screen"] = "Screens: what is measured and asked.",
        ["rules"] = "Rules: check them and see what they cover.",
    };

    /// <summary>The verbs in the order of the help.</summary>
    public static IReadOnlyList<Verb> All() =>
    [
        new ChooseVerb(),
        new WhyVerb(),
        new WhyNotVerb(),
        new WhatIfVerb(),
        new TurningPointsVerb(),
        new NextMeasurementVerb(),
        new HowSureVerb(),
        new ScreenTemplateVerb(),
        new RulesCheckVerb(),
        new RulesMatrixVerb(),
        new RulesTryVerb(),
        new RulesCoverageVerb(),
        new RulesMutateVerb(),
        new RulesRecordVerb(),
        new RulesReplayVerb(),
    ];
}
