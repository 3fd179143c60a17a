using HingeSelector.Knowledge;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Analysis;

/// <summary>Criteria against barbell variants: which rules can speak for and against, and where nobody does.</summary>
public sealed class RuleMatrix
{
    private static readonly string[] _bars = ["straight-bar", "hex-bar"];

    private readonly RuleBook _book;

    /// <summary>Lays out the points rules of a book.</summary>
    public RuleMatrix(RuleBook book)
    {
        _book = book;
        Variants = [.. book.Variants.Where(IsOnBar)];
        Cells = [.. book.Criteria.SelectMany(c => Variants.Select(v => new RuleMatrixCell(c, v, Speaking(c, v, 1), Speaking(c, v, -1))))];
    }

    /// <summary>The criteria in their order.</summary>
    public IReadOnlyList<Criterion> Criteria => _book.Criteria;

    /// <summary>Variants with a straight bar or a hex bar.</summary>
    public IReadOnlyList<Variant> Variants { get; }

    /// <summary>Every cell, criterion by criterion.</summary>
    public IReadOnlyList<RuleMatrixCell> Cells { get; }

    /// <summary>Cells in which something is missing.</summary>
    public IEnumerable<RuleMatrixCell> Holes => Cells.Where(c => c.Hole is not null);

    private bool IsOnBar(Variant variant)
    {
        var word = _book.Vocabulary["implement"];
        return _bars.Contains(word.Print(variant.Words.First(w => w.Slot == word.Slot).Value));
    }

    private List<Rule> Speaking(Criterion criterion, Variant variant, int sign)
        => [.. _book.Rules.Where(r => (r.Variants & (1UL << variant.Index)) != 0 && r.Conclusions.OfType<PointsConclusion>().Any(p => p.Criterion == criterion.Index && Math.Sign(p.Amount) == sign))];
}
