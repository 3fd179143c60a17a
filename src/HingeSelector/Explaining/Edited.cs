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
        return athlete with { Answers = answers };
    }
}
