using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>The record of an athlete with some answers otherwise.</summary>
internal static class Edited
{
    /// <summary>Changes answers; each keeps the day of the answer that it replaces, so that nothing else runs out or comes back.</summary>
    public static AthleteRecord Change(AthleteRecord athlete, IEnumerable<(AnswerKey Key, FactValue Value)> changes)
    {
        var answers = new Dictionary<AnswerKey, Answer>(athlete.Answers);
        foreach (var (key, value) in changes)
            answers[key] = answers[key] with { Value = value };
        return athlete with { Answers = answers };
    }

    /// <summary>Adds or replaces answers that are given on a day; a value that is not measured takes the answer away.</summary>
    public static AthleteRecord Answer(AthleteRecord athlete, IEnumerable<(AnswerKey Key, FactValue Value)> given, DateOnly on)
    {
        var answers = new Dictionary<AnswerKey, Answer>(athlete.Answers);
        foreach (var (key, value) in given)
        {
            if (value.State == FactState.NotMeasured)
                answers.Remove(key);
            else
                answers[key] = new Answer(value, on, null, null, "", SourceSpan.None);
        }
        return WithHeld(athlete, answers, on);
    }

    // A pull that is watched after others have been joins their list; one that was on file alone becomes its first entry.
    private static AthleteRecord WithHeld(AthleteRecord athlete, Dictionary<AnswerKey, Answer> answers, DateOnly on)
    {
        var seenIn = new AnswerKey(HeldWords.Variant, 0);
        var before = athlete.Find(HeldWords.Variant);
        var now = answers.GetValueOrDefault(seenIn);
        if (ReferenceEquals(before, now) || now is not { Value.IsKnown: true } || now.On != on || (before is null && athlete.HeldHeights.Count == 0))
            return athlete with { Answers = answers };
        List<HeldEntry> entries = [.. athlete.HeldHeights];
        if (entries.Count == 0 && Entry(athlete.Answers) is { } first)
            entries.Add(first);
        if (Entry(answers) is { } entry)
            entries = [.. entries.Where(e => e.Variant != entry.Variant), entry];
        foreach (var key in Held(answers).ToList())
            answers.Remove(key);
        return athlete with { Answers = answers, HeldHeights = entries };
    }

    private static IEnumerable<AnswerKey> Held(IReadOnlyDictionary<AnswerKey, Answer> answers)
        => answers.Keys.Where(k => k.Word == HeldWords.Variant || k.Word == HeldWords.Height || HeldWords.Parts.Any(p => p.Word == k.Word));

    private static HeldEntry? Entry(IReadOnlyDictionary<AnswerKey, Answer> answers)
        => answers.GetValueOrDefault(new AnswerKey(HeldWords.Variant, 0)) is { Value.IsKnown: true } seen
            ? new HeldEntry(System.Numerics.BitOperations.TrailingZeroCount(seen.Value.Bits), Held(answers).Where(k => k.Word != HeldWords.Variant).ToDictionary(k => k.Word, k => answers[k], StringComparer.Ordinal))
            : null;
}
