using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Candidates;

/// <summary>All set-up changes asked for one candidate, merged: where two differ the more cautious one stands.</summary>
public sealed record SetUpWishes
{
    private static readonly Dictionary<string, string> _permits = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["bar-height"] = "bar-height",
        ["grip-width"] = "grip-width",
        ["stance"] = "stance",
        ["straps"] = "straps",
        ["footwear"] = "footwear",
        ["lowering"] = "lowering",
        ["load"] = "load",
    };

    /// <summary>Nothing asked.</summary>
    public static SetUpWishes None { get; } = new();

    /// <summary>The bar as low as the joints allow and no lower.</summary>
    public bool LowestThatFits { get; init; }

    /// <summary>Height under which the hands may not start, m; null for none.</summary>
    public double? AtLeast { get; init; }

    /// <summary>Widest grip, m; null for none.</summary>
    public double? GripAtMost { get; init; }

    /// <summary>Words asked for, by key.</summary>
    public IReadOnlyDictionary<string, string> Words { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Merges changes; the order does not matter. What the variant does not permit is left out.</summary>
    /// <param name="changes">What rules ask.</param>
    /// <param name="permitted">What the variant permits.</param>
    public static SetUpWishes Merge(IEnumerable<RequestedChange> changes, IReadOnlySet<string> permitted)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        var (lowest, atLeast, atMost) = (false, (double?)null, (double?)null);
        foreach (var change in changes)
        {
            if (_permits.TryGetValue(change.Key, out var permit) && !permitted.Contains(permit))
                continue;
            switch (change)
            {
                case { Key: "bar-height", Number: { } height }:
                    atLeast = Math.Max(atLeast ?? 0, height);
                    break;
                case { Key: "bar-height" }:
                    lowest = true;
                    break;
                case { Key: "grip-width", Number: { } width }:
                    atMost = Math.Min(atMost ?? double.MaxValue, width);
                    break;
                case { Word: { } word }:
                    words[change.Key] = words.TryGetValue(change.Key, out var other) ? MoreCautious(change.Key, word, other) : word;
                    break;
            }
        }
        return new SetUpWishes { LowestThatFits = lowest, AtLeast = atLeast, GripAtMost = atMost, Words = words };
    }

    /// <summary>The word asked for, or what stands without a request: no straps, and of everything else the last of its list.</summary>
    public string Word(string key) => Words.TryGetValue(key, out var word) ? word : key == "straps" ? "none" : RequestedChange.Words[key][^1];

    private static string MoreCautious(string key, string a, string b)
    {
        var order = RequestedChange.Words[key].ToList();
        return order.IndexOf(a) <= order.IndexOf(b) ? a : b;
    }
}
