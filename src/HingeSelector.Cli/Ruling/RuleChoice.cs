using HingeSelector.Cli.Frame;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary>Picks the rules that a verb is about.</summary>
internal static class RuleChoice
{
    /// <summary>One rule, one topic, or all.</summary>
    /// <exception cref="UsageException">There is no such rule or topic, or both are named.</exception>
    public static IReadOnlyList<Rule> Of(RuleBook book, string? id, string? topic)
    {
        if (id is not null && topic is not null)
            throw new UsageException("A rule and '--topic' exclude each other.", "Name one rule, or a topic, or neither.");
        if (id is not null)
            return book.Rules.Where(r => r.Id == id).ToList() is { Count: > 0 } one ? one : throw new UsageException($"There is no rule '{id}'.", Slip.DidYouMean(id, [.. book.Rules.Select(r => r.Id)]));
        if (topic is null)
            return book.Rules;
        return book.Rules.Where(r => r.Topic == topic).ToList() is { Count: > 0 } rules ? rules : throw new UsageException($"There is no topic '{topic}'.", Slip.DidYouMeanOneOf(topic, [.. book.Rules.Select(r => r.Topic).Distinct()]));
    }
}
