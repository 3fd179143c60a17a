using HingeSelector.Knowledge;
using HingeSelector.Rules.Conditions;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>Works out every state of a family by filling fact tables as a screen would and asking the conditions.</summary>
internal sealed class FamilyBuilder
{
    private static readonly FactValue[] _leftAndRight = [FactValue.Choice(Sides.Left), FactValue.Choice(Sides.Right)];

    private readonly Vocabulary _vocabulary;
    private readonly FactValue[] _athlete;
    private readonly FactValue[] _candidate;

    /// <summary>Prepares empty tables.</summary>
    public FamilyBuilder(Vocabulary vocabulary)
    {
        _vocabulary = vocabulary;
        _athlete = new FactValue[vocabulary.AthleteSlots];
        _candidate = new FactValue[vocabulary.CandidateSlots];
    }

    /// <summary>The catalogue of variants: one state each.</summary>
    public Family OfVariants(int index, IReadOnlyList<Variant> variants, IReadOnlyList<Condition> leaves)
    {
        var word = _vocabulary["variant"];
        var states = new List<FamilyState>();
        foreach (var variant in variants)
        {
            foreach (var (slot, value) in variant.Words)
                _candidate[slot] = value;
            _candidate[word.Slot] = FactValue.Choice(variant.Index);
            states.Add(new FamilyState([new GivenWord(Vocabulary.Reading(word, null)!, FactValue.Choice(variant.Index))], Ask(leaves), true, variant.Index));
        }
        return new Family(index, word.Id, states, leaves);
    }

    /// <summary>A word without sides, at one of its readings where it has some.</summary>
    public Family OfReading(int index, WordReading reading, IReadOnlyList<Condition> leaves)
    {
        var states = new States();
        foreach (var answer in Samples.Of(reading.Word, Samples.Ends(reading.Word, leaves, false)))
        {
            (reading.Word.OfCandidate ? _candidate : _athlete)[reading.Slot] = answer;
            var tag = answer.State == FactState.NotApplicable ? -2 : answer.IsKnown && reading.Word.Kind == WordKind.Choice ? System.Numerics.BitOperations.TrailingZeroCount(answer.Bits) : -1;
            states.Add(answer == FactValue.Missing ? [] : [new GivenWord(reading, answer)], Ask(leaves), answer.IsKnown, tag);
        }
        return new Family(index, reading.Word.Id, states.All, leaves);
    }

    /// <summary>A set, apart from what is in it: not known, known, not applicable.</summary>
    public static Family OfSetItself(int index, WordReading reading)
    {
        var word = reading.Word;
        var states = new List<FamilyState> { new([], [], false, 0), new([new GivenWord(reading, FactValue.Of(0))], [], true, 1) };
        if (word.IsMeasured || word.MayNotApply)
            states.Add(new FamilyState([new GivenWord(reading, FactValue.NotApplicable)], [], false, 2));
        return new Family(index, word.Id, states, []);
    }

    /// <summary>One item of a set: out or in.</summary>
    public static Family OfItem(int index, Word word, int item)
        => new(index, $"{word.Id} {word.Values[item]}", [new FamilyState([], [], true, 0), new FamilyState([], [], true, 1)], []);

    /// <summary>Words that cannot lie below one another, each side for itself, and what rules read of the sides.</summary>
    /// <param name="index">Place of the family.</param>
    /// <param name="words">The words, those below which others cannot lie first.</param>
    /// <param name="leaves">Every condition on them.</param>
    /// <param name="throwing">Whether a condition reads the throwing or the other side.</param>
    public Family OfSides(int index, IReadOnlyList<Word> words, IReadOnlyList<Condition> leaves, bool throwing)
    {
        var ends = words.SelectMany(w => Samples.Ends(w, leaves, false)).Distinct().ToList();
        var gaps = words.SelectMany(w => Samples.Ends(w, leaves, true)).Distinct().ToList();
        // Two sides that lie a gap apart: what matters for one of them also matters a gap further on.
        var ofLeft = Side(words, [.. ends, .. ends.SelectMany(e => gaps.SelectMany(g => new[] { e - g, e + g })), .. gaps.Count > 0 ? gaps.SelectMany(g => RangeEnds(words[0], g)) : []]);
        var ofRight = Side(words, ends);
        var states = new States();
        foreach (var left in ofLeft)
        {
            var right = gaps.Count == 0 ? ofRight : Side(words, [.. ends, .. left.Where(v => v.IsExact).SelectMany(v => gaps.SelectMany(g => new[] { v.Low - g, v.Low, v.Low + g }))]);
            foreach (var other in words[0].Sided ? right : [left])
                AddPair(words, left, other, leaves, throwing, states);
        }
        return new Family(index, words[0].Id, states.All, leaves);
    }

    // Where a range ends, a gap from the end may no longer fit.
    private static IEnumerable<double> RangeEnds(Word word, double gap)
        => word.Range is { } range ? [range.Low + gap, range.High - gap] : [];

    private void AddPair(IReadOnlyList<Word> words, FactValue[] left, FactValue[] right, IReadOnlyList<Condition> leaves, bool throwing, States states)
    {
        for (var tag = 0; tag < (throwing ? 4 : 1); tag++)
        {
            var side = tag switch { 1 => _leftAndRight[0], 2 => _leftAndRight[1], 3 => FactValue.NotApplicable, _ => FactValue.Missing };
            for (var i = 0; i < words.Count; i++)
            {
                var (l, r) = (Raised(words, left, i), Raised(words, right, i));
                if (words[i].Sided)
                    SidedFacts.Fill(words[i], l, r, side, _athlete.AsSpan(words[i].Slot, words[i].Readings.Count));
                else
                    _athlete[words[i].Slot] = l;
            }
            states.Add(() => Given(words, left, right), Ask(leaves), Array.TrueForAll(left, v => v.IsKnown) && Array.TrueForAll(right, v => v.IsKnown), throwing ? tag : -1);
        }
    }

    private static List<GivenWord> Given(IReadOnlyList<Word> words, FactValue[] left, FactValue[] right)
    {
        var given = new List<GivenWord>();
        for (var i = 0; i < words.Count; i++)
        {
            if (!words[i].Sided && left[i] != FactValue.Missing)
                given.Add(new GivenWord(Vocabulary.Reading(words[i], null)!, left[i]));
            if (words[i].Sided && left[i] != FactValue.Missing)
                given.Add(new GivenWord(Vocabulary.Reading(words[i], Sides.Names[Sides.Left])!, left[i]));
            if (words[i].Sided && right[i] != FactValue.Missing)
                given.Add(new GivenWord(Vocabulary.Reading(words[i], Sides.Names[Sides.Right])!, right[i]));
        }
        return given;
    }

    private static FactValue Raised(IReadOnlyList<Word> words, FactValue[] answers, int i)
    {
        for (var j = 0; j < i; j++)
        {
            if (words[i].NotBelow == words[j].Id)
                return FactTable.AtLeast(words[i], answers[i], answers[j]);
        }
        return answers[i];
    }

    /// <summary>Every way in which one side of all words may be answered. A value below its floor counts as the floor, so it is left out.</summary>
    private static List<FactValue[]> Side(IReadOnlyList<Word> words, IReadOnlyList<double> ends)
    {
        var sides = new List<FactValue[]> { Array.Empty<FactValue>() };
        foreach (var word in words)
        {
            var answers = Samples.Of(word, ends);
            sides = [.. sides.SelectMany(s => answers.Select(a => (FactValue[])[.. s, a])).Where(s => !s[^1].IsKnown || Raised(words, s, s.Length - 1) == s[^1])];
        }
        return sides;
    }

    private Truth[] Ask(IReadOnlyList<Condition> leaves)
    {
        var view = new FactView(_athlete, _candidate, []);
        var truths = new Truth[leaves.Count];
        for (var i = 0; i < truths.Length; i++)
            truths[i] = leaves[i].Evaluate(view);
        return truths;
    }
}
