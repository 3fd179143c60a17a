using HingeSelector.Rules;

namespace HingeSelector.Recommending;

/// <summary>The folders of rules whose cautions come before all others.</summary>
internal static class SafetyTopics
{
    private static readonly HashSet<string> _topics = new(StringComparer.Ordinal) { "stops", "exclusions", "cautions" };

    /// <summary>Whether a rule stands in one of them.</summary>
    public static bool Has(Rule? rule) => rule is not null && _topics.Contains(rule.Topic);
}
