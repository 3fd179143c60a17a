using HingeSelector.Reading;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>A rule as its tree shows it.</summary>
internal sealed record NaiveRule(string Id, YamlMap When, IReadOnlyList<string> Findings, bool AsksCandidate, bool AsksChosenSetUp);
