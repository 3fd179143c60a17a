using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;

namespace HingeSelector.Cli;

/// <summary>The engine that decides; the only place where it is picked.</summary>
public static class EngineOfRecord
{
    /// <summary>The engine for a rule book.</summary>
    public static IRuleEngine For(RuleBook book) => new Network(book);
}
