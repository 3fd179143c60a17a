using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Recommending;

/// <summary>A stop that holds.</summary>
/// <param name="Level">How far it reaches.</param>
/// <param name="Answers">Who has to answer before a stop of level refer ends.</param>
/// <param name="See">Who to see.</param>
/// <param name="Say">What the coach reads.</param>
/// <param name="Trace">The rule and the facts it read.</param>
public sealed record StopNotice(StopLevel Level, WhoAnswers Answers, string See, string Say, RuleTrace Trace);
