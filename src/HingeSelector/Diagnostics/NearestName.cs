namespace HingeSelector.Diagnostics;

/// <summary>Finds the name that a person most likely meant.</summary>
public static class NearestName
{
    // Costs in tenths of a slip. A key beside the right one, a letter twice, two letters exchanged and a hyphen more or less are what fingers do.
    private const int Slip = 10;
    private const int Exchanged = 9;
    private const int KeyBeside = 9;
    private const int Doubled = 8;
    private const int Joint = 4;

    private static readonly string[] _rows = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];

    /// <summary>The closest candidate within a small distance, or null.</summary>
    /// <remarks>Two slips in short names, a third of the length in long ones; a whole-word prefix also counts.</remarks>
    public static string? Find(string typed, IEnumerable<string> candidates) => Guess(typed, candidates)?.Name;

    /// <summary>The closest candidate, and whether nothing else comes near it.</summary>
    public static (string Name, bool Sure)? Guess(string typed, IEnumerable<string> candidates)
    {
        var most = Math.Max(2, typed.Length / 3);
        var small = typed.ToLowerInvariant();
        var names = candidates.Distinct(StringComparer.Ordinal).ToList();
        // A difference in length is a distance already; long texts would cost time for nothing.
        var near = names.Where(c => Math.Abs(c.Length - typed.Length) <= most)
            .Select(c => (Name: c, Distance: Distance(small, c.ToLowerInvariant())))
            .Where(c => c.Distance <= most * Slip)
            .OrderBy(c => c.Distance)
            .ThenBy(c => c.Name[..Math.Min(1, c.Name.Length)] != small[..Math.Min(1, small.Length)])
            .ThenBy(c => c.Name.Length != typed.Length)
            .ThenBy(c => c.Name, StringComparer.Ordinal)
            .Take(2).ToList();
        if (near.Count > 0)
            return (near[0].Name, typed.Length >= 4 && near[0].Distance <= 2 * Slip && (near.Count == 1 || near[1].Distance >= near[0].Distance + Slip));
        return names.Order(StringComparer.Ordinal).FirstOrDefault(c => typed.Length >= 4 && c.StartsWith(typed, StringComparison.OrdinalIgnoreCase)) is { } longer ? (longer, false) : null;
    }

    /// <summary>Edit distance in tenths of a slip.</summary>
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 1; i <= a.Length; i++)
            d[i, 0] = d[i - 1, 0] + OneMore(a, i - 1);
        for (var j = 1; j <= b.Length; j++)
            d[0, j] = d[0, j - 1] + OneMore(b, j - 1);
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + OneMore(a, i - 1), d[i, j - 1] + OneMore(b, j - 1)), d[i - 1, j - 1] + Other(a[i - 1], b[j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + Exchanged);
            }
        }
        return d[a.Length, b.Length];
    }

    private static int OneMore(string text, int place)
        => IsJoint(text[place]) || (place > 0 && text[place] == text[place - 1]) ? Doubled : Slip;

    private static int Other(char typed, char meant)
    {
        if (typed == meant)
            return 0;
        if (IsJoint(typed) && IsJoint(meant))
            return Joint;
        return AreBeside(typed, meant) ? KeyBeside : Slip;
    }

    private static bool IsJoint(char letter) => letter is '-' or '_' or ' ';

    private static bool AreBeside(char a, char b)
    {
        var (rowA, rowB) = (RowOf(a), RowOf(b));
        if (rowA < 0 || rowB < 0)
            return false;
        var apart = _rows[rowB].IndexOf(b, StringComparison.Ordinal) - _rows[rowA].IndexOf(a, StringComparison.Ordinal);
        return (rowB - rowA) switch
        {
            0 => apart is 1 or -1,
            1 => apart is 0 or -1,
            -1 => apart is 0 or 1,
            _ => false,
        };
    }

    private static int RowOf(char letter) => Array.FindIndex(_rows, r => r.Contains(letter, StringComparison.Ordinal));
}
