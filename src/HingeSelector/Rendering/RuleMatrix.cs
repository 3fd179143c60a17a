using System.Globalization;
using HingeSelector.Knowledge;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rendering;

/// <summary>Criteria against barbell variants: which rules can speak for and against, and where nobody does.</summary>
public sealed class RuleMatrix
{
    private readonly RuleBook _book;

    /// <summary>Lays out the points rules of a book.</summary>
    public RuleMatrix(RuleBook book)
    {
        _book = book;
        Variants = [.. book.Variants.Where(v => VariantFacts.OnBar(book, v))];
        Cells = [.. book.Criteria.SelectMany(c => Variants.Select(v => new RuleMatrixCell(c, v, Speaking(c, v, 1), Speaking(c, v, -1))))];
    }

    /// <summary>Variants with a straight bar or a hex bar.</summary>
    public IReadOnlyList<Variant> Variants { get; }

    /// <summary>Every cell, criterion by criterion.</summary>
    public IReadOnlyList<RuleMatrixCell> Cells { get; }

    /// <summary>Cells in which something is missing.</summary>
    public IEnumerable<RuleMatrixCell> Holes => Cells.Where(c => c.Hole is not null);

    /// <summary>The matrix as plain text.</summary>
    /// <param name="withRules">Whether the rules of each cell are listed.</param>
    public IEnumerable<string> Rows(bool withRules)
    {
        yield return "Rules that can speak for / against; * disputed; ! hole";
        yield return "";
        var column = Variants.Max(v => v.Id.Length) + 2;
        yield return new string(' ', column) + string.Join("  ", _book.Criteria.Select(c => c.Id));
        foreach (var variant in Variants)
            yield return (variant.Id.PadRight(column) + string.Join("  ", Of(variant).Select(c => Counts(c).PadRight(c.Criterion.Id.Length)))).TrimEnd();
        yield return "";
        foreach (var row in withRules ? Cells.SelectMany(Listed) : [])
            yield return row;
        var holes = Holes.ToList();
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

    private IEnumerable<RuleMatrixCell> Of(Variant variant) => Cells.Where(c => c.Variant.Index == variant.Index);

    private List<Rule> Speaking(Criterion criterion, Variant variant, int sign)
        => [.. _book.Rules.Where(r => (r.Variants & (1UL << variant.Index)) != 0 && r.Conclusions.OfType<PointsConclusion>().Any(p => p.Criterion == criterion.Index && Math.Sign(p.Amount) == sign))];
}
