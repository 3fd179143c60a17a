using HingeSelector.Candidates;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Tells which set-up changes stand after merging.</summary>
public static class ChangeText
{
    /// <summary>
    /// What differs from the plain set-up, without the reasons: this text may lie where the athlete reads it, and a reason may
    /// be a health fact. The rules and what they read are in the derivation and in JSON. Null when nothing differs.
    /// </summary>
    /// <remarks>Requests that a more cautious one overrules, and plain defaults that apply to everyone, are left out.</remarks>
    public static string? Of(RankedCandidate ranked)
    {
        var changes = ranked.Changes.Where(c => c.Trace.Facts.Count > 0 && Stands(c.Change, ranked.Wishes)).Select(c => c.Change).Distinct().ToList();
        return changes.Count == 0 ? null : $"{string.Join(", ", changes)}, chosen for this athlete and day (the reasons: --why {ranked.Candidate.Variant.Id})";
    }

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
