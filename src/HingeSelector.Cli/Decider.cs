using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli;

/// <summary>Rules, engine and selector under one philosophy.</summary>
/// <param name="Book">The rules with its changes in.</param>
/// <param name="Engine">The engine that decides.</param>
/// <param name="Selector">Chooses by them.</param>
public sealed record Decider(RuleBook Book, IRuleEngine Engine, Selector Selector);
