using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Comparing;

/// <summary>An answer as far as it is compared with another: names instead of places, so that the two may come from different rules.</summary>
public sealed record Picture
{
    /// <summary>Id of the philosophy.</summary>
    public required string Philosophy { get; init; }

    /// <summary>What kind of answer it is.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>Every stop that holds, those that an emergency hides included.</summary>
    public required IReadOnlyList<PicturedStop> Stops { get; init; }

    /// <summary>Words that hold the athlete until they are answered.</summary>
    public required IReadOnlyList<string> Holds { get; init; }

    /// <summary>The ranked variants in order.</summary>
    public required IReadOnlyList<PicturedVariant> Ranked { get; init; }

    /// <summary>Ids of the variants that are out.</summary>
    public required IReadOnlyList<string> Out { get; init; }

    /// <summary>What to beware of, about the athlete.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Every rule that holds.</summary>
    public required IReadOnlyList<Firing> Fired { get; init; }

    /// <summary>The rules that it was made with, a philosophy laid over them.</summary>
    public required RuleBook Book { get; init; }

    /// <summary>The weights by criterion.</summary>
    public IReadOnlyList<int> Weights => Book.Philosophies[Philosophy].Weights;

    /// <summary>The picture of an answer.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="book">The rules that it was made with.</param>
    public static Picture Of(Recommendation answer, RuleBook book) => new()
    {
        Philosophy = answer.Stamp.Philosophy,
        Outcome = answer.Outcome,
        Stops = [.. answer.Fired.SelectMany(f => book.Rules[f.Rule].Conclusions.OfType<StopConclusion>().Select(s => Stop(book.Rules[f.Rule].Id, s, book)))],
        Holds = [.. answer.Unanswered.Select(u => u.Word)],
        Ranked = [.. answer.Ranked.Select(Variant)],
        Out = [.. answer.Excluded.Select(e => e.Variant.Id)],
        Cautions = [.. answer.Cautions.Select(c => c.Text)],
        Fired = answer.Fired,
        Book = book,
    };

    /// <summary>For whom a rule holds: ids of variants, or the athlete; empty when it does not hold or does not exist.</summary>
    public IReadOnlyList<string> HoldsFor(string rule)
    {
        var index = IndexOf(rule);
        return index < 0 ? [] : [.. Fired.Where(f => f.Rule == index).Select(f => f.Candidate < 0 ? "athlete" : Book.Variants[f.Candidate].Id).Order(StringComparer.Ordinal)];
    }

    // The rules of a book stand in order of id.
    private int IndexOf(string rule)
    {
        var (low, high) = (0, Book.Rules.Count - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var order = string.CompareOrdinal(Book.Rules[middle].Id, rule);
            if (order == 0)
                return middle;
            (low, high) = order < 0 ? (middle + 1, high) : (low, middle - 1);
        }
        return -1;
    }

    /// <summary>A stop conclusion by names.</summary>
    internal static PicturedStop Stop(string rule, StopConclusion stop, RuleBook book)
        => new(rule, stop.Level, stop.Say, stop.Level == StopLevel.Today ? book.Variants.Where(v => (stop.Allowed & (1UL << v.Index)) != 0).Select(v => v.Id).ToHashSet(StringComparer.Ordinal) : new HashSet<string>());

    private static PicturedVariant Variant(RankedCandidate ranked) => new(
        ranked.Candidate.Variant.Id,
        ranked.Candidate.Variant.Label,
        ranked.TiedWithFirst,
        ranked.Score,
        ranked.Points,
        Band.Of(ranked.Candidate.Choice),
        ranked.Wishes,
        [.. ranked.Cues.Select(c => c.Say)],
        [.. ranked.Cautions.Select(c => c.Text)]);
}
