using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Population;

/// <summary>Facts that go together more often than chance brings them together in four thousand people.</summary>
internal sealed partial class SurveyPeople
{
    // Shares are judgements without a source, made so that each of these pairs is met a few times; no claim about throwers.
    private const double PainWhereOperated = 0.3;
    private const double BackPainOfYoungFastBowlers = 0.05;
    private const double BackPainDownALeg = 0.05;
    private const double ArmsReadFarTooShort = 0.02;
    private const double ShortArm = 0.45;
    private const double YoungBowler = 25 * HoursPerYear;

    private static readonly (string Operation, string Pain)[] _operated =
    [
        ("spine-operation", "low-back-pain-worst"), ("shoulder-operation", "shoulder-pain-worst"), ("elbow-operation", "elbow-pain-worst"),
        ("wrist-or-hand-operation", "wrist-pain-worst"), ("hip-operation", "hip-pain-worst"), ("knee-operation", "knee-pain-worst"),
    ];

    private void RarePairs(Dictionary<AnswerKey, Answer> answers)
    {
        // What was operated on speaks up again in three of ten, as an old stress injury of the back does.
        foreach (var (operation, pain) in _operated)
        {
            foreach (var (item, side) in new[] { (operation, Sides.Left), ($"{operation} left", Sides.Left), ($"{operation} right", Sides.Right) })
            {
                if (Has(answers, "history", item) && Together(PainWhereOperated))
                    Put(answers, pain, 1, _vocabulary[pain].Sided ? side : 0);
            }
        }
        // Stress injuries of the low back are the fast bowler's own, and the young one's above all (alway-2019): one in twenty asks about one today.
        if (Has(answers, "role", "fast-bowler") && answers[new AnswerKey("age", 0)].Value.Low <= YoungBowler && Together(BackPainOfYoungFastBowlers))
            Choose(answers, "back-pain-two-weeks-or-leaning-back", "yes");
        // A disc that was hurt once may press on a nerve again.
        if (Has(answers, "history", "low-back-disc-injury") && Together(BackPainDownALeg))
            Choose(answers, "pain-spreading-down-a-leg", "yes");
        // A tape that slipped gives a body that no pull fits.
        if (answers.ContainsKey(new AnswerKey("arm-length", 0)) && Together(ArmsReadFarTooShort))
            Put(answers, "arm-length", ShortArm);
    }

    private bool Has(Dictionary<AnswerKey, Answer> answers, string word, string value)
        => _vocabulary[word].Values.ToList().IndexOf(value) is >= 0 and var place && (answers[new AnswerKey(word, 0)].Value.Bits & (1UL << place)) != 0;

    private bool Together(double share) => _pairs.NextDouble() < share;
}
