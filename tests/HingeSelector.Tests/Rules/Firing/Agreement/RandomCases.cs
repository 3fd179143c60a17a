using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>Random fact tables over a vocabulary, dense around the numbers at which rules change their mind.</summary>
internal sealed class RandomCases
{
    private static readonly FactState[] _reasons = [FactState.NotMeasured, FactState.Refused, FactState.Expired, FactState.Undecided, FactState.NotApplicable];

    private readonly RuleBook _book;
    private readonly Thresholds _thresholds;
    private readonly Word[] _ofAthlete;
    private readonly Word[] _ofCandidate;
    private readonly Word _throwingSide;

    public RandomCases(RuleBook book)
    {
        _book = book;
        _thresholds = new Thresholds(book);
        _ofAthlete = [.. book.Vocabulary.Words.Where(w => !w.OfCandidate)];
        _ofCandidate = [.. book.Vocabulary.Words.Where(w => w.About == WordAbout.Candidate && w.Id != "variant")];
        _throwingSide = book.Vocabulary["throwing-side"];
    }

    /// <summary>A case before the set-up search; the same seed gives the same case.</summary>
    public CaseFacts First(int seed)
    {
        var random = new Random(seed);
        var known = Known(random);
        // With some ninety pains drawn wide, nobody would ever be without a high one; every other athlete is at ease.
        var calm = random.Next(2) == 0;
        var athlete = new FactValue[_book.Vocabulary.AthleteSlots];
        foreach (var word in _ofAthlete)
        {
            for (var side = 0; side < (word.Sided ? 2 : Math.Max(1, word.Readings.Count)); side++)
            {
                var mild = calm && word.Groups.Contains("pain") && random.NextDouble() < known;
                athlete[word.Slot + side] = mild ? FactValue.Number(random.Next(3)) : Draw(word, known, random);
            }
        }
        int? throwing = athlete[_throwingSide.Slot].IsKnown ? (int)(athlete[_throwingSide.Slot].Bits >> 1) : null;
        foreach (var word in _ofAthlete.Where(w => w.Sided))
            SidedValues.Fill(athlete, word, throwing);
        var candidates = new FactValue[_book.Variants.Count][];
        for (var i = 0; i < candidates.Length; i++)
        {
            candidates[i] = new FactValue[_book.Vocabulary.CandidateSlots];
            foreach (var (slot, value) in _book.Variants[i].Words)
                candidates[i][slot] = value;
            candidates[i][_book.Vocabulary["variant"].Slot] = FactValue.Choice(i);
            foreach (var word in _ofCandidate)
                candidates[i][word.Slot] = Computed(word, known, random);
        }
        return new CaseFacts(athlete, candidates);
    }

    /// <summary>Fills in what the set-up search would, as it would be done between the stages.</summary>
    public void FillChosen(CaseFacts facts, int seed)
    {
        var random = new Random(~seed);
        var known = Known(random);
        foreach (var table in facts.Candidates)
        {
            foreach (var word in _ofCandidate.Where(w => w.Readings.Count == 2))
                table[word.Slot + 1] = Computed(word, known, random);
        }
    }

    // Some athletes have answered everything, some hardly anything.
    private static double Known(Random random) => random.Next(4) switch
    {
        0 => 1,
        1 => 0.95,
        2 => 0.75,
        _ => random.NextDouble(),
    };

    private FactValue Draw(Word word, double known, Random random)
    {
        if (random.NextDouble() >= known)
            return FactValue.Unknown(_reasons[random.Next(_reasons.Length)]);
        return word.Kind switch
        {
            WordKind.Number => FactValue.Number(_thresholds.Draw(word, random)),
            WordKind.Choice when word.Groups.Contains("stop-questions") => FactValue.YesNo(random.Next(20) == 0),
            WordKind.Choice => FactValue.Choice(random.Next(word.Values.Count)),
            WordKind.Set => FactValue.Of(Some(word.Values.Count, random)),
            _ => FactValue.Unknown(FactState.NotMeasured),
        };
    }

    private FactValue Computed(Word word, double known, Random random)
    {
        var value = Draw(word, known, random);
        if (word.Kind != WordKind.Number || !value.IsKnown || random.Next(6) != 0)
            return value;
        var other = _thresholds.Draw(word, random);
        return FactValue.Between(Math.Min(value.Low, other), Math.Max(value.Low, other));
    }

    private static ulong Some(int count, Random random)
    {
        var bits = 0UL;
        for (var draws = random.Next(4); draws > 0; draws--)
            bits |= 1UL << random.Next(count);
        return bits;
    }
}
