using HingeSelector.Rules.Reading;

namespace HingeSelector.Examples.Proposing;

/// <summary>Writes proposals into the text of rule files. Nothing but the lines of the changes is touched, so comments and order stay.</summary>
public static class TriesEdit
{
    private const int Widest = 150;

    private static readonly string[] _order = [.. ExampleReader.WithKeys.Take(2).Select(k => k.Key), .. ExampleReader.ForKeys.Select(k => k.Key), ExampleReader.WithKeys[2].Key, ExampleReader.WithoutKey];

    /// <summary>The lines to paste below an example, by key, each list as short as it can be.</summary>
    /// <param name="proposals">Proposals for one example.</param>
    /// <param name="indent">Blanks before each line.</param>
    public static IReadOnlyList<string> Lines(IEnumerable<Proposal> proposals, int indent)
    {
        var byKey = proposals.ToLookup(p => p.Key, p => p.Item);
        return [.. _order.Where(k => byKey.Contains(k)).SelectMany(k => List(k, [.. byKey[k]], indent))];
    }

    /// <summary>A text with proposals written into it.</summary>
    /// <param name="text">The text of one rule file.</param>
    /// <param name="proposals">Proposals for examples of that file.</param>
    /// <param name="skipped">Proposals whose example stands in brackets on one line, where nothing can stand below it.</param>
    public static string Apply(string text, IEnumerable<Proposal> proposals, out IReadOnlyList<Proposal> skipped)
    {
        var lines = text.Split('\n').ToList();
        var left = new List<Proposal>();
        // From the bottom up, so that the places above stay true.
        foreach (var group in proposals.GroupBy(p => p.Fired).OrderByDescending(g => g.Key.At.Span.Line))
        {
            var line = lines[group.Key.At.Span.Line];
            var indent = line.Length - line.TrimStart().Length;
            if (!line.TrimStart().StartsWith("expect:", StringComparison.Ordinal))
                left.AddRange(group);
            else
                Insert(lines, group.Key.At.Span.Line, indent, [.. group]);
        }
        skipped = left;
        return string.Join('\n', lines);
    }

    private static void Insert(List<string> lines, int expect, int indent, IReadOnlyList<Proposal> proposals)
    {
        var fresh = new List<Proposal>();
        foreach (var key in proposals.GroupBy(p => p.Key))
        {
            // A list that grows may take more lines, so the end is looked for each time.
            var place = lines.FindIndex(expect, EndOfExample(lines, expect, indent) - expect, l => l.StartsWith($"{new string(' ', indent)}{key.Key}:", StringComparison.Ordinal));
            if (place < 0)
                fresh.AddRange(key);
            else
                Append(lines, place, indent, [.. key.Select(p => p.Item)]);
        }
        lines.InsertRange(EndOfExample(lines, expect, indent), Lines(fresh, indent));
    }

    private static int EndOfExample(List<string> lines, int expect, int indent)
    {
        var end = expect + 1;
        while (end < lines.Count && lines[end].Length > indent && lines[end][..indent].Trim().Length == 0)
            end++;
        return end;
    }

    // A list that is there keeps its lines; the new items go before its closing bracket.
    private static void Append(List<string> lines, int place, int indent, IReadOnlyList<string> items)
    {
        if (lines[place].TrimEnd().EndsWith(':'))
        {
            do
                place++;
            while (place < lines.Count && lines[place].StartsWith(new string(' ', indent + 1), StringComparison.Ordinal));
            lines.InsertRange(place, items.Select(i => $"{new string(' ', indent + 2)}- {i}"));
            return;
        }
        while (place < lines.Count - 1 && !lines[place].TrimEnd().EndsWith(']'))
            place++;
        lines[place] = $"{lines[place].TrimEnd()[..^1]}, {string.Join(", ", items)}]";
    }

    // One line where it is short enough, else one item a line.
    private static IEnumerable<string> List(string key, IReadOnlyList<string> items, int indent)
    {
        var line = $"{new string(' ', indent)}{key}: [{string.Join(", ", items)}]";
        return line.Length <= Widest ? [line] : [$"{new string(' ', indent)}{key}:", .. items.Select(i => $"{new string(' ', indent + 2)}- {i}")];
    }
}
