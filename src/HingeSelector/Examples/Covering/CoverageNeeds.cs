using HingeSelector.Candidates;
using HingeSelector.Examples.Mutating;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Examples.Covering;

/// <summary>Lists what the examples of a rule should show.</summary>
internal sealed class CoverageNeeds
{
    private readonly FactView[] _variants;
    private readonly FactValue[] _emptyFile;

    /// <summary>Looks at an empty file and at every variant, to leave out what cannot be.</summary>
    public CoverageNeeds(RuleBook book)
    {
        var nobody = new AthleteRecord { Id = "nobody", Answers = new Dictionary<AnswerKey, Answer>() };
        var question = new Question(nobody, null, null, book.Philosophies.Values.First(), new DateOnly(2026, 1, 1));
        _emptyFile = new Selector(book, new Rules.Evaluating.LoopEvaluator(book)).GatherFacts(nobody, question);
        _variants = [.. book.Variants.Select(v => new FactView(_emptyFile, CandidateTable.Bare(book.Vocabulary, v, _emptyFile, null, null), new Truth[book.Findings.Count]))];
    }

    /// <summary>Everything that some example of the rule should show.</summary>
    public IReadOnlyList<CoverageItem> Of(Rule rule)
        => [.. ConditionLine.Of(rule).SelectMany(line => States(line).Select(n => new CoverageItem(rule, line, n, double.NaN)).Concat(Ends(rule, line)))];

    private IEnumerable<CoverageNeed> States(ConditionLine line)
    {
        var ofVariant = line.Leaves.All(l => l.Reads.Any() && l.Reads.All(IsOfVariant));
        // Words of the variant are what the catalogue says; where all variants agree there is nothing to show.
        if (!ofVariant || Array.Exists(_variants, v => line.Condition.Evaluate(v) == Truth.True))
            yield return CoverageNeed.Met;
        if (ofVariant ? Array.Exists(_variants, v => line.Condition.Evaluate(v) == Truth.False) : !line.Leaves.All(CannotFail))
            yield return CoverageNeed.NotMet;
        if (line.Leaves.Any(l => l is FindingCondition || l.Reads.Any(CanBeUnknown)))
            yield return CoverageNeed.Unknown;
    }

    // "at least 5 cm" of a word that begins at 5 cm only asks whether it is known.
    private static bool CannotFail(Condition leaf)
        => leaf is NumberCondition number && Equivalence.RangeOf(number.Reading) is var range && number.Interval.Intersect(range) == range;

    private static bool IsOfVariant(WordReading reading) => reading.Word.About == WordAbout.Variant || reading.Word.Id == "variant";

    // What is known of a file without a single answer stays known whatever is answered.
    private bool CanBeUnknown(WordReading reading)
        => !IsOfVariant(reading) && (reading.Word.OfCandidate || !_emptyFile[reading.Slot].IsKnown);

    private static IEnumerable<CoverageItem> Ends(Rule rule, ConditionLine line)
    {
        if (line.Leaves.OfType<NumberCondition>().FirstOrDefault() is not { } number)
            yield break;
        var (interval, range, word) = (number.Interval, Equivalence.RangeOf(number.Reading), number.Reading.Word);
        var ends = new[] { (End: interval.Low, In: interval.LowIn, Inward: 1), (End: interval.High, In: interval.HighIn, Inward: -1) };
        foreach (var (end, isIn, inward) in ends.Where(e => double.IsFinite(e.End)))
        {
            if (range.Contains(isIn ? end : Steps.Move(word, end, inward)))
                yield return new CoverageItem(rule, line, CoverageNeed.ThresholdInside, end);
            if (range.Contains(isIn ? Steps.Move(word, end, -inward) : end))
                yield return new CoverageItem(rule, line, CoverageNeed.ThresholdOutside, end);
        }
    }
}
