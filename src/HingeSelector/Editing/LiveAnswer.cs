using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Editing;

/// <summary>An answer, and what it changes against the one before it.</summary>
public sealed class LiveAnswer
{
    /// <summary>Compares an answer with the one before it.</summary>
    /// <param name="book">The rules behind the answer.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="before">The one before it; null for the first.</param>
    public LiveAnswer(RuleBook book, Recommendation answer, LiveAnswer? before)
    {
        (Book, Answer) = (book, answer);
        if (before is null)
            return;
        Before = before.Answer;
        Rules = Edited(before.Book, book);
        Moved = [.. book.Variants.Select(v => new Move(v.Label, StandOf(before.Answer, v.Id), StandOf(answer, v.Id))).Where(m => m.From != m.To)];
    }

    /// <summary>The rules behind the answer.</summary>
    public RuleBook Book { get; }

    /// <summary>The answer.</summary>
    public Recommendation Answer { get; }

    /// <summary>The answer before it; null for the first.</summary>
    public Recommendation? Before { get; }

    /// <summary>Rules that came, went or say something else.</summary>
    public IReadOnlyList<EditedRule> Rules { get; } = [];

    /// <summary>Variants whose place or score changed.</summary>
    public IReadOnlyList<Move> Moved { get; } = [];

    private static List<EditedRule> Edited(RuleBook before, RuleBook after)
    {
        var (was, isNow) = (BookPrint.Of(before), BookPrint.Of(after));
        return [.. was.Keys.Union(isNow.Keys).Order(StringComparer.Ordinal).Select(id => (Id: id, Was: was.GetValueOrDefault(id), Now: isNow.GetValueOrDefault(id))).Where(r => r.Was != r.Now)
            .Select(r => new EditedRule(r.Id, r.Was is null ? "new" : r.Now is null ? "gone" : "changed"))];
    }

    private static Stand? StandOf(Recommendation answer, string variant)
        => answer.Ranked.FirstOrDefault(r => r.Candidate.Variant.Id == variant) is { } ranked ? new Stand(ranked.Place, ranked.Score) : null;

    /// <summary>A rule that is not what it was.</summary>
    /// <param name="Id">The rule.</param>
    /// <param name="How">new, gone or changed.</param>
    public sealed record EditedRule(string Id, string How);

    /// <summary>A variant that does not stand where it stood.</summary>
    /// <param name="Label">The variant.</param>
    /// <param name="From">Where it stood; null when it was not ranked.</param>
    /// <param name="To">Where it stands; null when it is not ranked.</param>
    public sealed record Move(string Label, Stand? From, Stand? To);

    /// <summary>Place and score.</summary>
    /// <param name="Place">From 1.</param>
    /// <param name="Score">Weighted points.</param>
    public sealed record Stand(int Place, int Score);
}
