using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>Makes the safe edits in the texts of a folder; everything around them, remarks and order included, stays as it is.</summary>
public static class Fixer
{
    /// <summary>Makes every safe edit that some diagnostics suggest.</summary>
    /// <param name="files">The texts as they were read.</param>
    /// <param name="found">The diagnostics.</param>
    /// <returns>The texts with the edits made, and the edits in file order. Of edits that overlap only the first is made.</returns>
    public static (RuleFiles Files, IReadOnlyList<SuggestedEdit> Done) Apply(RuleFiles files, IEnumerable<Diagnostic> found)
    {
        var done = new List<SuggestedEdit>();
        foreach (var byFile in found.Select(d => d.Edit).OfType<SuggestedEdit>().Where(e => e.Safe).Distinct().GroupBy(e => e.Source.Path, StringComparer.Ordinal))
        {
            var key = byFile.Key[(files.Name.Length + 1)..];
            var edits = WithoutOverlap(byFile);
            files = files.With(key, Make(files.Texts[key], edits));
            done.AddRange(edits);
        }
        return (files, [.. done.OrderBy(e => e.Source.Path, StringComparer.Ordinal).ThenBy(e => e.Line).ThenBy(e => e.Column)]);
    }

    private static List<SuggestedEdit> WithoutOverlap(IEnumerable<SuggestedEdit> edits)
    {
        var kept = new List<SuggestedEdit>();
        foreach (var edit in edits.OrderBy(e => e.Line).ThenBy(e => e.Column))
        {
            if (kept.Count == 0 || (edit.Line, edit.Column).CompareTo((kept[^1].EndLine, kept[^1].EndColumn)) >= 0)
                kept.Add(edit);
        }
        return kept;
    }

    // From the end to the start, so that the places of the earlier ones still hold.
    private static string Make(string text, List<SuggestedEdit> edits)
    {
        foreach (var edit in Enumerable.Reverse(edits))
            text = text[..Offset(text, edit.Line, edit.Column)] + edit.NewText + text[Offset(text, edit.EndLine, edit.EndColumn)..];
        return text;
    }

    private static int Offset(string text, int line, int column)
    {
        var start = 0;
        for (; line > 0; line--)
        {
            var end = text.IndexOf('\n', start);
            if (end < 0)
                return text.Length;
            start = end + 1;
        }
        return Math.Min(text.Length, start + column);
    }
}
