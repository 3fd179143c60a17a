using HingeSelector.Diagnostics;

namespace HingeSelector.Rules;

/// <summary>What a philosophy does to one rule, and why.</summary>
/// <param name="Philosophy">Id of the philosophy.</param>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Kind">Changed, switched off or added.</param>
/// <param name="What">What differs from the base, in words.</param>
/// <param name="Reason">Why; for an added rule its own reason.</param>
/// <param name="Span">Where the philosophy says so.</param>
public sealed record RuleChange(string Philosophy, string Rule, RuleChangeKind Kind, string What, string Reason, SourceSpan Span);
