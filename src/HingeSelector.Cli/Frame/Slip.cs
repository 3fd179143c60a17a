using HingeSelector.Diagnostics;

namespace HingeSelector.Cli.Frame;

/// <summary>Guesses what a mistyped name was meant to be.</summary>
public static class Slip
{
    private const int MostOffered = 3;

    /// <summary>A sentence that offers the likely names, or null when none is near.</summary>
    public static string? DidYouMean(string typed, IReadOnlyCollection<string> names)
    {
        // One slip can lie between two names (--op is one letter from --on and from --top): then both are offered.
        var near = names.Where(n => IsOneSlip(typed, n)).Order(StringComparer.Ordinal).ToList();
        if (near.Count == 0 && NearestName.Find(typed, names) is { } nearest)
            near.Add(nearest);
        return near.Count is 0 or > MostOffered ? null : $"Did you mean {string.Join(" or ", near.Select(n => $"'{n}'"))}?";
    }

    /// <summary>A sentence that offers the likely names or, when none is near, lists them all.</summary>
    public static string DidYouMeanOneOf(string typed, IReadOnlyCollection<string> names)
        => DidYouMean(typed, names) ?? $"Known: {string.Join(", ", names.Order(StringComparer.Ordinal))}.";

    /// <summary>Whether one letter too many, too few, wrong, or two neighbours swapped turn one text into the other.</summary>
    public static bool IsOneSlip(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 1)
            return false;
        var start = 0;
        while (start < a.Length && start < b.Length && a[start] == b[start])
            start++;
        var (restA, restB) = (a[start..], b[start..]);
        if (a.Length > b.Length)
            return restA[1..] == restB;
        if (a.Length < b.Length)
            return restB[1..] == restA;
        return restA.Length < 2
            || restA[1..] == restB[1..]
            || (restA[0] == restB[1] && restA[1] == restB[0] && restA[2..] == restB[2..]);
    }
}
