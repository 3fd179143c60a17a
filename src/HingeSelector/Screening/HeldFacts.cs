using System.Numerics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Held heights pull by pull: one reading a pull, not applicable where nothing was seen in it.</summary>
/// <param name="record">The athlete.</param>
/// <param name="vocabulary">The words.</param>
/// <param name="inForce">The value of an answer as it counts on the day.</param>
/// <param name="facts">The table, single words already in it.</param>
internal sealed class HeldFacts(AthleteRecord record, Vocabulary vocabulary, Func<Word, Answer?, FactValue> inForce, FactValue[] facts)
{
    /// <summary>Fills their slots; the bare words are filled already.</summary>
    public void Fill()
    {
        if (vocabulary.Find(HeldWords.Variant) is not { } seenIn)
            return;
        foreach (var word in vocabulary.Words.Where(w => w.ByPull))
        {
            for (var variant = 0; variant < word.Readings.Count - 1; variant++)
                facts[word.Slot + 1 + variant] = ValueOf(variant, word, facts[seenIn.Slot]);
        }
    }

    private FactValue ValueOf(int variant, Word single, FactValue seenIn)
    {
        if (record.HeldHeights.Count > 0)
            return record.HeldHeights.FirstOrDefault(h => h.Variant == variant) is { } entry ? inForce(single, entry.Answers.GetValueOrDefault(single.Id)) : FactValue.NotApplicable;
        // A height without its pull is there, but nobody can tell for which pull it speaks.
        if (!seenIn.IsKnown)
            return facts[single.Slot].IsKnown ? FactValue.Undecided : FactValue.Unknown(seenIn.State);
        return BitOperations.TrailingZeroCount(seenIn.Bits) == variant ? facts[single.Slot] : FactValue.NotApplicable;
    }
}
