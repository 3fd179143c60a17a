namespace HingeSelector.Examples.Squads;

/// <summary>A golden squad: the decisions for a roster, kept to be compared with those of later rules.</summary>
/// <param name="Tool">Version of the program that decided.</param>
/// <param name="RulesHash">Hash of the rules that decided.</param>
/// <param name="Input">What else they rest on.</param>
/// <param name="Athletes">The decisions in the order of the roster.</param>
public sealed record SquadRecord(string Tool, string RulesHash, SquadInput Input, IReadOnlyList<AthleteDecision> Athletes);
