using HingeSelector.Rules;

namespace HingeSelector.Editing;

/// <summary>A rule that was asked for.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Through">The finding through which it rests on what was asked about; null when it reads or gives it itself.</param>
public sealed record ListedRule(Rule Rule, Finding? Through);
