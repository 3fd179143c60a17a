using HingeSelector.Quantities;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Recommending;

/// <summary>The same athlete with every measure off by one standard error in the same direction.</summary>
internal static class ErrorScenario
{
    /// <summary>Shifts every number that has a stated error and a worse end.</summary>
    /// <param name="athlete">The athlete.</param>
    /// <param name="vocabulary">Says the errors.</param>
    /// <param name="sign">-1 towards the worse end, +1 towards the better end.</param>
    public static AthleteRecord Shift(AthleteRecord athlete, Vocabulary vocabulary, int sign)
    {
        var answers = new Dictionary<AnswerKey, Answer>(athlete.Answers);
        foreach (var (key, answer) in athlete.Answers)
        {
            var word = vocabulary[key.Word];
            // Ratings are what the athlete says; a point of pain is not moved by statistics.
            if (word.Kind != WordKind.Number || word.Worse == WorseEnd.None || word.Dimension == Dimension.Rating || !answer.Value.IsExact)
                continue;
            var error = word.ErrorOf(answer.Value.Low);
            if (error == 0)
                continue;
            var better = word.Worse == WorseEnd.Lower ? 1 : -1;
            answers[key] = answer with { Value = FactValue.Number(answer.Value.Low + (sign * better * error)) };
        }
        return athlete with { Answers = answers };
    }
}
