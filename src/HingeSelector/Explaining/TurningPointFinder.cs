using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Moves one fact at a time, everything else held, and looks for the nearest value with another first choice.</summary>
public sealed class TurningPointFinder
{
    private const int Threads = 2;
    private const int MostStrides = 60;

    private readonly RuleBook _book;
    private readonly Question _question;
    private readonly Decider _decider;
    private readonly RuleNumbers _numbers;

    private TurningPointFinder(RuleBook book, Question question)
    {
        (_book, _question) = (book, question);
        _decider = Decider.For(book, question);
        _numbers = new RuleNumbers(book);
    }

    /// <summary>Finds them.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="question">The athlete, the room, the day.</param>
    public static TurningPoints Find(RuleBook book, Question question) => new TurningPointFinder(book, question).Find();

    private TurningPoints Find()
    {
        var leftOut = Changeable.LeftOut(_book.Vocabulary);
        if (_decider.Base.First < 0)
            return new TurningPoints(null, [], [], 0, leftOut);
        var facts = Movable().ToList();
        var numbers = new List<TurningPoint>[facts.Count];
        var answers = new List<OtherAnswer>[facts.Count];
        Parallel.For(0, facts.Count, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i =>
        {
            var (word, key, value) = facts[i];
            numbers[i] = word.Kind == WordKind.Number ? [.. new[] { Nearest(word, key, value.Low, 1), Nearest(word, key, value.Low, -1) }.OfType<TurningPoint>()] : [];
            answers[i] = word.Kind == WordKind.Choice ? [.. Others(word, key, value)] : [];
        });
        return new TurningPoints(
            _book.Variants[_decider.Base.First],
            [.. numbers.SelectMany(n => n).OrderBy(p => p.InErrors ?? double.MaxValue).ThenBy(p => p.Label, StringComparer.Ordinal).ThenBy(p => p.At)],
            [.. answers.SelectMany(a => a)],
            facts.Count,
            leftOut);
    }

    // What counts today, may be proposed, and is a number or one of a list.
    private IEnumerable<(Word Word, AnswerKey Key, FactValue Value)> Movable()
    {
        foreach (var word in _book.Vocabulary.Words.Where(w => w.IsMeasured && w.Kind is WordKind.Number or WordKind.Choice && Changeable.WhyNot(_book.Vocabulary, w) is null))
        {
            for (var side = 0; side <= (word.Sided ? 1 : 0); side++)
            {
                var value = _decider.Facts[word.Slot + side];
                if (value.IsExact && _question.Athlete.Find(word.Id, side) is not null)
                    yield return (word, new AnswerKey(word.Id, side), value);
            }
        }
    }

    private TurningPoint? Nearest(Word word, AnswerKey key, double now, int direction)
    {
        if (word.Range is not { } range)
            return null;
        var steps = Steps.Of(word);
        var start = direction > 0 ? steps.AtOrBelow(now) : steps.AtOrAbove(now);
        var end = direction > 0 ? steps.AtOrBelow(range.High) : steps.AtOrAbove(range.Low);
        if ((end - start) * direction <= 0)
            return null;
        var search = new FirstChange(_decider.Base, step => _decider.Decide(Edited.Change(_question.Athlete, [(key, FactValue.Number(steps[step]))])));
        if (search.Along(start, Stops(word, key, steps, start, end)) is not { } found)
            return null;
        var decision = search.At(found);
        // Nothing is proposed that would take a stop of today away.
        if (decision.Outcome < _decider.Base.Outcome)
            return null;
        var error = word.ErrorOf(now);
        return new TurningPoint(word, word.Sided ? Sides.Names[key.Side] : null, now, steps[found], error > 0 ? Math.Abs(steps[found] - now) / error : null, decision.First < 0 ? null : _book.Variants[decision.First], decision.Outcome);
    }

    // Both neighbours of every number at which a rule asks about the fact. Where something is worked out from it (a posture, a share
    // of body mass), the numbers of that lie anywhere, so strides of one measuring error are tried as well.
    private IEnumerable<int> Stops(Word word, AnswerKey key, Steps steps, int start, int end)
    {
        var (low, high) = (Math.Min(start, end), Math.Max(start, end));
        var error = word.ErrorOf(steps[start]);
        var stride = Math.Max(1, Math.Max((int)Math.Round(error / steps.Size), (high - low) / MostStrides));
        var stops = new SortedSet<int> { end };
        var inBetween = _decider.WorksOut(word, Edited.Change(_question.Athlete, [(key, FactValue.Number(steps[end]))]));
        for (var i = 1; inBetween && i * stride < high - low; i++)
            stops.Add(start + (i * stride * Math.Sign(end - start)));
        var other = _question.Athlete.Find(word.Id, 1 - key.Side) is { Value.IsExact: true } answer && word.Sided ? answer.Value.Low : (double?)null;
        foreach (var number in _numbers.Of(word.Id).Concat(other is { } o ? _numbers.GapsOf(word.Id).SelectMany(g => new[] { o - g, o + g }) : []))
        {
            for (var step = steps.AtOrBelow(number) - 1; step <= steps.AtOrAbove(number) + 1; step++)
                stops.Add(step);
        }
        var inside = stops.Where(s => s >= low && s <= high && s != start);
        return end > start ? inside : inside.Reverse();
    }

    private IEnumerable<OtherAnswer> Others(Word word, AnswerKey key, FactValue now)
    {
        for (var i = 0; i < word.Values.Count; i++)
        {
            var value = FactValue.Choice(i);
            if (value == now)
                continue;
            var decision = _decider.Decide(Edited.Change(_question.Athlete, [(key, value)]));
            if (!decision.SameChoice(_decider.Base) && decision.Outcome >= _decider.Base.Outcome)
                yield return new OtherAnswer(word, word.Print(now), word.Values[i], decision.First < 0 ? null : _book.Variants[decision.First], decision.Outcome);
        }
    }
}
