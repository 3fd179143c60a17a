using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules;

/// <summary>A rule as read and compiled.</summary>
public sealed record Rule
{
    /// <summary>Place in the rule book; rules are ordered by id, so that files may be moved.</summary>
    public int Index { get; init; }

    /// <summary>Name.</summary>
    public required string Id { get; init; }

    /// <summary>Folder of its file.</summary>
    public required string Topic { get; init; }

    /// <summary>Where.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>All conditions in the author's order.</summary>
    public required IReadOnlyList<Condition> Conditions { get; init; }

    /// <summary>Conditions that depend on the athlete or the candidate, without those that <see cref="Variants"/> settles.</summary>
    public required IReadOnlyList<Condition> OpenConditions { get; init; }

    /// <summary>Variants that meet the conditions on words of the variant, one bit each.</summary>
    public required ulong Variants { get; init; }

    /// <summary>Whether it is asked once per candidate.</summary>
    public required bool PerCandidate { get; init; }

    /// <summary>Whether it reads the set-up that the search has chosen.</summary>
    public required bool AfterSetUp { get; init; }

    /// <summary>What follows.</summary>
    public required IReadOnlyList<Conclusion> Conclusions { get; init; }

    /// <summary>The reason, in words that a coach would say.</summary>
    public required string Because { get; init; }

    /// <summary>How far to trust the reason.</summary>
    public required Grade Grade { get; init; }

    /// <summary>Whether published evidence points both ways or against.</summary>
    public required bool Disputed { get; init; }

    /// <summary>Ids of sources.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>Examples.</summary>
    public required IReadOnlyList<RuleExample> Tries { get; init; }

    /// <summary>What the philosophy in force has changed about it; null for a rule of the base.</summary>
    public RuleChange? Change { get; init; }

    /// <summary>Warnings that the author has looked at and lets stand, with the reason.</summary>
    public IReadOnlyList<Acceptance> Accepts { get; init; } = [];

    /// <summary>Whether it concludes a finding, so that others wait for it.</summary>
    public bool Finds => Conclusions.Any(c => c is FindingConclusion);
}
