using System.Numerics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>What letters clear, item of the history by item: a letter counts for what it is about and for nothing else.</summary>
internal sealed class ClearanceFacts(AthleteRecord record, Vocabulary vocabulary, DateOnly on, FactValue[] facts)
{
    /// <summary>Fills the words about clearances.</summary>
    public void Fill()
    {
        // A cap limits what the athlete lifts, whatever it was written for.
        var cap = record.Clearances.Where(c => c.IsValid(on)).Min(c => c.Cap);
        facts[vocabulary["clearance-load-cap"].Slot] = cap is { } kilograms ? FactValue.Number(kilograms) : FactValue.NotApplicable;
        if (vocabulary.Find(ClearanceTerms.About) is not { } history)
            return;
        var onFile = facts[history.Slot];
        var covers = vocabulary.Clearance.Covers;
        FillSet(vocabulary["not-cleared"], onFile, history, (item, cover) => !LettersFor(item).Any(c => c.IsValid(on) && c.Covers.Contains(covers[cover])));
        FillSet(vocabulary["letter"], onFile, history, (item, state) => StateOf(item) == ClearanceTerms.States[state]);
    }

    /// <summary>Each reading holds the items of the history for which a test holds; without a known history nothing is known.</summary>
    private void FillSet(Word word, FactValue onFile, Word history, Func<string, int, bool> holds)
    {
        for (var reading = 0; reading < word.Readings.Count; reading++)
        {
            var found = 0UL;
            for (var left = onFile.IsKnown ? onFile.Bits : 0; left != 0; left &= left - 1)
            {
                var item = BitOperations.TrailingZeroCount(left);
                if (holds(history.Values[item], reading))
                    found |= 1UL << (history.ValueSides?.PlainOf(item) ?? item);
            }
            facts[word.Slot + reading] = onFile.IsKnown ? FactValue.Of(found) : onFile.State == FactState.NotApplicable ? FactValue.NotApplicable : FactValue.Undecided;
        }
    }

    // An item whose side is not on file may be either side; letters name a side, so none is known to be about it.
    private IEnumerable<Clearance> LettersFor(string item) => record.Clearances.Where(c => c.For.Contains(item));

    private string StateOf(string item)
    {
        var letters = LettersFor(item).ToList();
        if (letters.Any(c => c.IsValid(on)))
            return "valid";
        if (letters.Count == 0)
            return "none";
        return letters.Any(c => c.Date > on) ? "not-yet-valid" : "expired";
    }
}
