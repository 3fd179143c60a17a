using HingeSelector.Candidates;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Tells which set-up changes stand after merging, rule by rule, with the numbers behind them.</summary>
public static class ChangeText
{
    private const int MostFacts = 4;

    /// <summary>One sentence a rule. Requests that a more cautious one overrules, and plain defaults that apply to everyone, are left out.</summary>
    public static IEnumerable<string> Of(RankedCandidate ranked)
        => ranked.Changes
            .Where(c => c.Trace.Facts.Count > 0 && Stands(c.Change, ranked.Wishes))
            .GroupBy(c => c.Trace.Rule.Id, StringComparer.Ordinal)
            .Select(g => $"{string.Join(", ", g.Select(c => c.Change).Distinct())} <- {TraceText.Facts(g.First().Trace, MostFacts)}; rule {TraceText.Rule(g.First().Trace.Rule)}");

    private static bool Stands(string change, SetUpWishes wishes)
    {
        var colon = change.IndexOf(':', StringComparison.Ordinal);
        var (key, asked) = (change[..colon], change[(colon + 2)..]);
        return key switch
        {
            "bar-height" => (wishes.LowestThatFits && asked.StartsWith("lowest", StringComparison.Ordinal)) || (wishes.AtLeast is { } height && asked == $"at least {Cm.Of(height)}"),
            "grip-width" => wishes.GripAtMost is { } width && asked == $"at most {Cm.Of(width)}",
            _ => wishes.Words.TryGetValue(key, out var word) && word == asked,
        };
    }
}
