using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Tries every plausible value of everything that was not measured, one fact at a time, and counts other first choices.</summary>
public sealed class NextMeasurementFinder
{
    private const int Threads = 2;
    private const int Stride = 5;
    private const int MostExamples = 3;
    private const string HeldHeight = "held-height";

    private static readonly string[] _heldWords = ["held-height-variant", "held-height-grip", "held-height-stance"];

    private readonly RuleBook _book;
    private readonly Question _question;
    private readonly Decider _decider;
    private readonly Spreads _spreads;

    private NextMeasurementFinder(RuleBook book, Question question)
    {
        (_book, _question) = (book, question);
        _decider = Decider.For(book, question);
        _spreads = new Spreads(book, question, _decider.Facts);
    }

    /// <summary>Finds them.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="question">The athlete, the room, the day.</param>
    public static NextMeasurement Find(RuleBook book, Question question) => new NextMeasurementFinder(book, question).Find();

    private NextMeasurement Find()
    {
        var leftOut = Changeable.LeftOut(_book.Vocabulary);
        if (_decider.Base.First < 0)
            return new NextMeasurement(null, [], [], leftOut);
        var open = _book.Vocabulary.Words.Where(w => w.IsMeasured && Changeable.WhyNot(_book.Vocabulary, w) is null && IsMissing(w)).ToList();
        var words = open.Where(w => !IsRefused(w) && w.Kind is WordKind.Number or WordKind.Choice or WordKind.Set && !_spreads.GoesWithAnother(w) && !GoesWithHeldHeight(w)).ToList();
        var held = words.Exists(w => w.Id == HeldHeight) ? _decider.HeldHeights() : null;
        var measures = new Measure[words.Count];
        Parallel.For(0, words.Count, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i => measures[i] = Weigh(words[i], words[i].Id == HeldHeight ? held : null));
        return new NextMeasurement(
            _book.Variants[_decider.Base.First],
            [.. measures.OrderByDescending(m => m.Chance / (m.Minutes ?? 1) ?? -1).ThenByDescending(m => m.MayChange).ThenBy(m => m.Minutes ?? double.MaxValue).ThenBy(m => m.Word.Id, StringComparer.Ordinal)],
            [.. open.Where(IsRefused).Select(w => w.Label)],
            leftOut);
    }

    // A held height is wanted in the first choice; what was seen in another pull says nothing about it.
    private bool IsMissing(Word word) => word.Id == HeldHeight
        ? !_decider.Facts[Vocabulary.Reading(word, _book.Variants[_decider.Base.First].Id)!.Slot].IsKnown
        : Sides(word).Any(v => v.State is FactState.NotMeasured or FactState.Expired or FactState.Refused);

    private bool IsRefused(Word word) => Sides(word).Any(v => v.State == FactState.Refused);

    private IEnumerable<FactValue> Sides(Word word) => Enumerable.Range(0, word.Sided ? 2 : 1).Select(side => _decider.Facts[word.Slot + side]);

    private static bool GoesWithHeldHeight(Word word) => _heldWords.Contains(word.Id);

    private Measure Weigh(Word word, PlausibleValues? held)
    {
        var expired = Sides(word).Any(v => v.State == FactState.Expired);
        if (word.Kind != WordKind.Number)
            return OfList(word, expired);
        // A height seen in nobody knows which pull says nothing about any.
        var plausible = word.Id == HeldHeight ? held : _spreads.Of(word);
        if (plausible is null || plausible.Values.Count == 0)
            return new Measure(word, expired, word.Minutes, null, [], null, []);
        var decisions = Along(plausible);
        var changed = Enumerable.Range(0, decisions.Length).Where(i => Counts(decisions[i])).ToList();
        var becomes = changed.GroupBy(i => decisions[i].First).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).Where(g => g.Key >= 0).Select(g => _book.Variants[g.Key]).ToList();
        return plausible.Spread is { } spread
            ? new Measure(word, expired, word.Minutes, (double)changed.Count / decisions.Length, becomes, spread, [])
            : new Measure(word, expired, word.Minutes, null, becomes, null, [.. changed.GroupBy(i => decisions[i].First).Take(MostExamples).Select(g => $"{word.Print(plausible.Values[g.First()])}: {NameOf(decisions[g.First()])}")]);
    }

    // Every value is decided, but neighbours that rest on the same rules are taken for alike.
    private Decision[] Along(PlausibleValues plausible)
    {
        var decisions = new Decision?[plausible.Values.Count];
        Decision At(int i) => decisions[i] ??= _decider.Decide(Edited.Answer(_question.Athlete, plausible.Answers(plausible.Values[i]), _question.On));
        void Fill(int from, int to)
        {
            var (a, b) = (At(from), At(to));
            if (to - from <= 1)
                return;
            if (a.Signature == b.Signature || plausible.Values[from].Equals(plausible.Values[to]))
            {
                for (var i = from + 1; i < to; i++)
                    decisions[i] ??= a;
                return;
            }
            var middle = (from + to) / 2;
            Fill(from, middle);
            Fill(middle, to);
        }

        var last = decisions.Length - 1;
        for (var from = 0; from < last; from += Stride)
            Fill(from, Math.Min(from + Stride, last));
        At(last);
        return decisions!;
    }

    private Measure OfList(Word word, bool expired)
    {
        var values = word.Kind == WordKind.Set ? [FactValue.Of(0), FactValue.Of(word.Values.Count == 64 ? ulong.MaxValue : (1UL << word.Values.Count) - 1)] : Enumerable.Range(0, word.Values.Count).Select(FactValue.Choice).ToList();
        var changed = values.Select(v => (Value: v, Decision: _decider.Decide(Edited.Answer(_question.Athlete, [(new AnswerKey(word.Id, 0), v)], _question.On)))).Where(p => Counts(p.Decision)).ToList();
        return new Measure(word, expired, word.Minutes, null, [.. changed.Where(c => c.Decision.First >= 0).Select(c => _book.Variants[c.Decision.First]).Distinct()], null, [.. changed.Select(c => $"{Say(word, c.Value)}: {NameOf(c.Decision)}")]);
    }

    private bool Counts(Decision decision) => !decision.SameChoice(_decider.Base);

    private static string Say(Word word, FactValue value) => word.Kind == WordKind.Set ? value.Bits == 0 ? "none" : "all" : word.Print(value);

    private string NameOf(Decision decision) => decision.First < 0 ? "no pull" : _book.Variants[decision.First].Label;
}
