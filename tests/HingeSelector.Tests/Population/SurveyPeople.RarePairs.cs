using HingeSelector.Screening;

namespace HingeSelector.Tests.Population;

/// <summary>Facts that go together more often than chance brings them together in four thousand people.</summary>
internal sealed partial class SurveyPeople
{
    // Shares are judgements without a source, made so that each of these pairs is met a few times; no claim about throwers.
    private const double PainWhereOperated = 0.3;
    private const double BackPainOfYoungFastBowlers = 0.05;
    private const double YoungBowler = 25 * HoursPerYear;

    private static readonly (string Operation, string Pain)[] _operated =
    [
        ("spine-operation", "low-back-pain-worst"), ("shoulder-operation", "shoulder-pain-worst"),
        ("elbow-operation", "elbow-pain-worst"), ("wrist-or-hand-operation", "wrist-pain-worst"),
    ];

    private void RarePairs(Dictionary<AnswerKey, Answer> answers)
    {
        // What was operated on speaks up again in three of ten, as an old stress injury of the back does.
        foreach (var (operation, pain) in _operated)
        {
            if (Has(answers, "history", operation) && Together(PainWhereOperated))
                Put(answers, pain, 1);
        }
        // Stress injuries of the low back are the fast bowler's own, and the young one's above all (alway-2019): one in twenty asks about one today.
        if (Has(answers, "role", "fast-bowler") && answers[new AnswerKey("age", 0)].Value.Low <= YoungBowler && Together(BackPainOfYoungFastBowlers))
            Choose(answers, "back-pain-two-weeks-or-leaning-back", "yes");
    }

    private bool Has(Dictionary<AnswerKey, Answer> answers, string word, string value)
        => (answers[new AnswerKey(word, 0)].Value.Bits & (1UL << _vocabulary[word].Values.ToList().IndexOf(value))) != 0;

    private bool Together(double share) => _pairs.NextDouble() < share;
}
