using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Editing;

/// <summary>Brings a file of the rules into the shared layout without changing what it says.</summary>
public static class RuleFormat
{
    /// <summary>Formats one file.</summary>
    /// <param name="path">Path inside the rules folder.</param>
    /// <param name="source">The file.</param>
    /// <param name="bag">Collects the faults of a file that is not YAML; such a file is left alone.</param>
    /// <returns>The text in the shared layout; the same text where nothing is to be done.</returns>
    /// <remarks>
    /// Doing it twice is doing it once: the layout counts only when it reads as the old text does, has lost no sign, and is left as it
    /// is by another run. Where it does not, because values run over several lines, blank space alone is mended.
    /// </remarks>
    public static string Of(string path, SourceText source, DiagnosticBag bag)
    {
        if (YamlReader.Read(source, bag) is not { } root)
            return source.Text;
        var tidy = Tidy(source.Text);
        var laidOut = LaidOut(path, tidy);
        if (laidOut is not null && Keeps(source, root, laidOut) && Tidy(laidOut) == laidOut && LaidOut(path, laidOut) == laidOut)
            return laidOut;
        return Keeps(source, root, tidy) ? tidy : source.Text;
    }

    private static bool Keeps(SourceText source, YamlNode root, string text)
        => YamlReader.Read(new SourceText(source.Path, text), new DiagnosticBag()) is { } read && ReadsAlike(root, read) && Signs(source.Text).SequenceEqual(Signs(text));

    // Every sign but blanks, comments included: whatever moves, nothing may be lost.
    private static IEnumerable<char> Signs(string text) => text.Where(c => !char.IsWhiteSpace(c)).Order();

    /// <summary>Whether two trees say the same; the order of keys counts only where it is the author's.</summary>
    internal static bool ReadsAlike(YamlNode a, YamlNode b, string key = "") => (a, b) switch
    {
        (YamlScalar x, YamlScalar y) => x.Value == y.Value && x.Quoted == y.Quoted,
        (YamlList x, YamlList y) => x.Items.Count == y.Items.Count && x.Items.Zip(y.Items).All(p => ReadsAlike(p.First, p.Second, key)),
        (YamlMap x, YamlMap y) => x.Entries.Count == y.Entries.Count
            && x.Entries.All(e => y.Find(e.Key.Value) is { } other && ReadsAlike(e.Value, other, e.Key.Value))
            // At the top of a file and below keys with an order of their own keys may change places.
            && (key.Length == 0 || KeyOrder.Below(key).Count > 0 || x.Entries.Select(e => e.Key.Value).SequenceEqual(y.Entries.Select(e => e.Key.Value))),
        _ => false,
    };

    // Files at the top hold tables of many shapes: there only blank space is mended.
    private static string? LaidOut(string path, string text)
    {
        var source = new SourceText(path, text);
        return path.Contains('/', StringComparison.Ordinal) && YamlReader.Read(source, new DiagnosticBag()) is YamlMap { Entries.Count: > 0 } root ? CanonicalLayout.Write(path, source, root) : null;
    }

    // No blanks at the end of a line, at most one empty line in a row, none at the start, one line end at the end.
    private static string Tidy(string text)
    {
        var kept = new List<string>();
        foreach (var line in text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n').Select(l => l.TrimEnd(' ')))
        {
            if (line.Length > 0 || (kept.Count > 0 && kept[^1].Length > 0))
                kept.Add(line);
        }
        while (kept.Count > 0 && kept[^1].Length == 0)
            kept.RemoveAt(kept.Count - 1);
        return string.Join('\n', kept) + "\n";
    }
}
