using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Solving;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Analysis;

/// <summary>Makes the whole answer for a screen that the solver has found, all other questions answered with nothing.</summary>
internal static class WholeAnswer
{
    private static readonly DateOnly _day = new(2026, 1, 1);

    /// <summary>The answer; null when the vocabulary lacks words that a whole answer needs.</summary>
    /// <remarks>Words that are worked out come from the other answers here, not from the screen.</remarks>
    public static Recommendation? For(RuleBook book, IReadOnlyList<GivenWord> screen)
    {
        if (!ProgramInputs.Ids.All(i => book.Vocabulary.Find(i) is not null))
            return null;
        var answers = new Dictionary<AnswerKey, Answer>();
        foreach (var word in book.Vocabulary.Words.Where(w => w.IsMeasured && w.Groups.Count > 0))
        {
            for (var side = 0; side < (word.Sided ? 2 : 1); side++)
                answers[new AnswerKey(word.Id, side)] = Answered(Plain(word));
        }
        foreach (var given in screen.Where(g => g.Reading.Word.IsMeasured))
            answers[new AnswerKey(given.Reading.Word.Id, given.Reading.Word.Sided ? given.Reading.Slot - given.Reading.Word.Slot : 0)] = Answered(given.Value);
        var record = new AthleteRecord { Id = "check", Answers = answers };
        return new Selector(book, new LoopEvaluator(book)).Choose(new Question(record, null, null, book.Philosophies.Values.First(), _day));
    }

    private static Answer Answered(FactValue value) => new(value, _day, null, null, "", SourceSpan.None);

    /// <summary>Whether an answer is what is taken anyhow when the screen does not give it.</summary>
    public static bool IsPlain(GivenWord given) => given.Reading.Word.IsMeasured && given.Reading.Word.Groups.Count > 0 && given.Value == Plain(given.Reading.Word);

    // No pain, no to every sign, nothing on file, and what an under-18 needs is there.
    private static FactValue Plain(Word word) => word.Kind switch
    {
        WordKind.Number => FactValue.Number(word.Range?.Low ?? 0),
        WordKind.Set => FactValue.Of(0),
        _ when word.Groups.Contains("must-answer-under-18") => FactValue.YesNo(true),
        _ => FactValue.Choice(0),
    };
}
