using HingeSelector.Diagnostics;

namespace HingeSelector.Analysis;

/// <summary>HS3109: variants of which no rule speaks by some criterion, or only one side where evidence is disputed.</summary>
internal static class MatrixCheck
{
    /// <summary>Looks at every cell.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        foreach (var cell in new RuleMatrix(book.Book).Holes)
            bag.Add(Problems.MatrixHole(cell.Variant.Span, cell.Variant.Id, cell.Criterion.Id, cell.Hole!));
    }
}
