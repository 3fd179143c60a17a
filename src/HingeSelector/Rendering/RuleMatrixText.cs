using System.Globalization;
using HingeSelector.Analysis;

namespace HingeSelector.Rendering;

/// <summary>The matrix of rules for people.</summary>
public static class RuleMatrixText
{
    /// <summary>The matrix as plain text.</summary>
    /// <param name="matrix">The matrix.</param>
    /// <param name="withRules">Whether the rules of each cell are listed.</param>
    public static IEnumerable<string> Rows(RuleMatrix matrix, bool withRules)
    {
        yield return "Rules that can speak for / against; * disputed; ! hole";
        yield return "";
        var column = matrix.Variants.Max(v => v.Id.Length) + 2;
        yield return new string(' ', column) + string.Join("  ", matrix.Criteria.Select(c => c.Id));
        foreach (var variant in matrix.Variants)
            yield return (variant.Id.PadRight(column) + string.Join("  ", matrix.Cells.Where(c => c.Variant.Index == variant.Index).Select(c => Counts(c).PadRight(c.Criterion.Id.Length)))).TrimEnd();
        yield return "";
        foreach (var row in withRules ? matrix.Cells.SelectMany(Listed) : [])
            yield return row;
        var holes = matrix.Holes.ToList();
        yield return holes.Count == 0 ? "No holes." : $"{holes.Count.ToString(CultureInfo.InvariantCulture)} holes:";
        foreach (var hole in holes)
            yield return $"  {hole.Criterion.Id}, {hole.Variant.Id}: {hole.Hole}";
    }

    private static IEnumerable<string> Listed(RuleMatrixCell cell)
    {
        yield return $"{cell.Criterion.Id}, {cell.Variant.Id}{(cell.IsDisputed ? ", disputed" : "")}";
        foreach (var rule in cell.For)
            yield return $"  for      {TraceText.Rule(rule)}{(rule.Disputed ? ", disputed" : "")}";
        foreach (var rule in cell.Against)
            yield return $"  against  {TraceText.Rule(rule)}{(rule.Disputed ? ", disputed" : "")}";
        yield return "";
    }

    private static string Counts(RuleMatrixCell cell)
        => string.Create(CultureInfo.InvariantCulture, $"{cell.For.Count}/{cell.Against.Count}{(cell.IsDisputed ? "*" : "")}{(cell.Hole is null ? "" : "!")}");
}
