using System.Globalization;
using HingeSelector.Comparing;
using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Tells what changes for a squad between two philosophies.</summary>
public static class PhilosophyComparisonText
{
    /// <summary>The lines.</summary>
    public static IEnumerable<Line> Of(PhilosophyComparison comparison)
    {
        var (from, to, book) = (comparison.From, comparison.To, comparison.Book);
        var firsts = comparison.Comparison.Changes.Count(c => (c.Kinds & ChangeKinds.FirstChoice) != 0);
        yield return Line.Title($"{from.Label} -> {to.Label}: {comparison.Comparison.Changes.Count} of {ChangeGroupText.Athletes(comparison.Comparison.Asked)} change, {firsts} of them in the first choice.");
        yield return Line.Heading("What differs");
        foreach (var criterion in book.Criteria.Where(c => from.Weights[c.Index] != to.Weights[c.Index]))
            yield return Line.Text("Weight", string.Create(CultureInfo.InvariantCulture, $"{criterion.Label}: {from.Weights[criterion.Index]} -> {to.Weights[criterion.Index]} ({criterion.Weight} in the base)"));
        foreach (var line in Rules(book, from).Concat(Rules(book, to)))
            yield return line;
        yield return Line.Text("Sealed", "Stops, holds, cautions and the limits of pain, history, youth and clearance are those of the base under both.");
        foreach (var line in ChangeGroupText.Of(comparison.Groups, book))
            yield return line;
        yield return Line.Faint("Compared by the plain evaluator; the examples shown are confirmed by the engine of record.");
    }

    private static IEnumerable<Line> Rules(RuleBook book, Philosophy philosophy)
        => (book.Overlays.GetValueOrDefault(philosophy.Id)?.Changes ?? []).Select(c => Line.Text("Rule", $"{philosophy.Id}: {c.Rule}: {c.What}. {c.Reason} At {c.Span.FileAndLine}"));
}
