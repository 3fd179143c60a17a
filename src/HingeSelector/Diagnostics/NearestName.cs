namespace HingeSelector.Diagnostics;

/// <summary>Finds the name that a person most likely meant.</summary>
public static class NearestName
{
    /// <summary>The closest candidate within a small distance, or null.</summary>
    /// <remarks>Two slips in short names, a third of the length in long ones; a whole-word prefix also counts.</remarks>
    public static string? Find(string typed, IEnumerable<string> candidates)
    {
        string? best = null;
        var bestDistance = Math.Max(2, typed.Length / 3) + 1;
        foreach (var candidate in candidates.Order(StringComparer.Ordinal))
        {
            // A difference in length is a distance already; long texts would cost time for nothing.
            if (Math.Abs(candidate.Length - typed.Length) >= bestDistance)
                continue;
            var distance = Distance(typed.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < bestDistance)
                (best, bestDistance) = (candidate, distance);
        }
        return best ?? candidates.Order(StringComparer.Ordinal).FirstOrDefault(c =>
            typed.Length >= 4 && c.StartsWith(typed, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Edit distance where a swap of two neighbours counts as one slip.</summary>
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }
        return d[a.Length, b.Length];
    }
}
