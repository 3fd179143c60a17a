using HingeSelector.Candidates;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Rendering;

/// <summary>What the coach saw at the bar, beside what was computed. Lengths in metres.</summary>
/// <param name="Height">Held height.</param>
/// <param name="Grip">Grip at which it was seen; null when not noted.</param>
/// <param name="Stance">Stance at which it was seen; null when not noted.</param>
/// <param name="Computed">Lowest height that fits by computation; null when none could be computed.</param>
/// <param name="Decides">Whether it sets the height of this set-up.</param>
public sealed record HeldSeen(double Height, double? Grip, double? Stance, double? Computed, bool Decides)
{
    /// <summary>Held less computed; positive when the athlete needed a higher bar than computed.</summary>
    public double? LessComputed => Height - Computed;

    /// <summary>The held height of an answer where it was seen in this candidate's variant; null without one in force.</summary>
    public static HeldSeen? In(RuleBook book, Recommendation answer, Candidate candidate)
    {
        if (answer.Athlete.Find("held-height") is null || candidate.Choice is not { } choice)
            return null;
        // The fact table knows which answers have run out.
        var facts = FactTable.Build(answer.Athlete, book.Vocabulary, answer.Stamp.On, null);
        double? Seen(string word) => facts[Vocabulary.Reading(book.Vocabulary[word], candidate.Variant.Id)!.Slot] is { IsExact: true } value ? value.Low : null;
        return Seen("held-height") is { } height
            ? new HeldSeen(height, Seen("held-height-grip"), Seen("held-height-stance"), LowestThatFits(choice)?.Metres, choice.Held is not null)
            : null;
    }

    /// <summary>
    /// The lowest height of the room, from the standard one upwards, that fits by computation. Not the search's own lowest:
    /// that one starts at what rules ask, and some rules ask because of the held height, so the two would only agree with themselves.
    /// </summary>
    public static Length? LowestThatFits(SetUpChoice choice)
    {
        var runs = choice.Heights.Further.Concat(choice.Heights.Fitting is { } around ? [around] : []).ToList();
        return runs.Count == 0 ? null : runs.Min(r => r.From);
    }

    /// <summary>Both heights and their difference as a sentence.</summary>
    public override string ToString()
    {
        var at = (Grip, Stance) switch
        {
            ({ } grip, { } stance) => $" (grip {Cm.Of(grip)}, stance {Cm.Of(stance)})",
            ({ } grip, null) => $" (grip {Cm.Of(grip)})",
            _ => "",
        };
        var weight = Decides ? "what was seen decides" : "it was seen at another grip or stance, so it does not set the height by itself";
        return $"{Cm.Of(Height)} seen at the bar{at}, {Beside()}; {weight}";
    }

    private string Beside()
    {
        if (LessComputed is not { } difference)
            return "no height could be computed beside it";
        return Cm.Of(Math.Abs(difference)) == Cm.Of(0)
            ? $"{Cm.Of(Computed!.Value)} computed: no difference"
            : $"{Cm.Of(Computed!.Value)} computed: {Cm.Of(Math.Abs(difference))} {(difference > 0 ? "higher" : "lower")} than computed";
    }
}
