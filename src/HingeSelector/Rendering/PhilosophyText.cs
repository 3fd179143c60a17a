using HingeSelector.Knowledge;
using HingeSelector.Rules;
using HingeSelector.Screening;

namespace HingeSelector.Rendering;

/// <summary>Says what a philosophy has changed, and who decided for it.</summary>
public static class PhilosophyText
{
    /// <summary>The word of a kind of change.</summary>
    public static string Word(RuleChangeKind kind) => kind switch
    {
        RuleChangeKind.Added => "added",
        RuleChangeKind.Off => "off",
        _ => "changed",
    };

    /// <summary>What was done to a rule, with the reason and the place.</summary>
    public static string Changed(RuleChange change)
    {
        var did = change.Kind switch
        {
            RuleChangeKind.Added => "added this rule",
            RuleChangeKind.Off => "switched this off",
            _ => $"changed this: {change.What}",
        };
        var reason = change.Kind == RuleChangeKind.Added ? "" : $" {change.Reason}";
        return $"Your philosophy ({change.Philosophy}) {did}.{reason} At {change.Span.FileAndLine}";
    }

    /// <summary>A weight that differs from the base, as an addition to its line; empty where it does not.</summary>
    public static string Weight(Criterion criterion, int weight) => weight == criterion.Weight ? "" : $" (your philosophy changed this: {criterion.Weight} in the base)";

    /// <summary>A philosophy with the decision that put it in force.</summary>
    public static string InForce(string philosophy, PhilosophyDecision? decision)
        => decision is null ? philosophy : $"{philosophy} (of record{(decision.TrainingGroup is { } group ? $" for the training group {group}" : "")} since {StampText.Date(decision.Since)}, decided by {decision.DecidedBy})";
}
