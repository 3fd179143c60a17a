using HingeSelector.Rules;

namespace HingeSelector.Recommending;

/// <summary>A rule that took part in an answer, with the facts that it read.</summary>
/// <param name="rule">The rule.</param>
/// <param name="read">Looks the facts up; most surfaces show few of them, so they are looked up when asked for.</param>
public sealed class RuleTrace(Rule rule, Func<IReadOnlyList<FactRead>> read)
{
    private IReadOnlyList<FactRead>? _facts;

    /// <summary>The rule.</summary>
    public Rule Rule { get; } = rule;

    /// <summary>What it read.</summary>
    public IReadOnlyList<FactRead> Facts => _facts ??= read();
}
