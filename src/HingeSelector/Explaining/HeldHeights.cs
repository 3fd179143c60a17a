using HingeSelector.Candidates;
using HingeSelector.Posture;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>
/// Where the held height of the first choice may lie: the lowest height that fits, over draws of measures, model and unmeasured
/// segments. No spread of held heights is published; this is what the errors of the computation leave open.
/// </summary>
internal sealed class HeldHeights(RuleBook book, Question question, HeightLists heights)
{
    private const int Draws = 200;

    /// <summary>Plausible held heights in a variant; null when the model cannot say.</summary>
    /// <param name="candidate">The first choice with its chosen set-up.</param>
    /// <param name="wishes">What rules asked of it.</param>
    public PlausibleValues? Of(Candidate candidate, SetUpWishes wishes)
    {
        if (candidate.Choice is not { FirstTry: var firstTry, Outcome: StartPosition })
            return null;
        var draws = new Draws(book, question.Athlete);
        var found = new double?[Draws];
        Parallel.For(0, Draws, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            var (model, athlete) = draws[i];
            var builder = new CandidateBuilder(model, AthleteFacts.Gather(model, athlete, question.On, question.Room), heights);
            found[i] = Lowest(builder.WithChoice(builder.Standard(candidate.Variant), wishes, true));
        });
        var values = found.OfType<double>().Order().ToList();
        return values.Count == 0 ? null : new PlausibleValues(values, height => Seen(candidate.Variant.Index, height, firstTry), "what the errors of measuring, model and survey leave open; mechanics");
    }

    // Nobody who fits nowhere would be let down further than the highest start.
    private static double? Lowest(Candidate candidate) => candidate.Choice is { } choice && candidate.Heights is { } heights && choice.ComputedFit != Fit.Unknown
        ? choice.ComputedLowest?.Metres ?? heights.Heights[^1].Height
        : null;

    private static IReadOnlyList<(AnswerKey, FactValue)> Seen(int variant, double height, SetUp at) =>
    [
        (new AnswerKey("held-height", 0), FactValue.Number(height)),
        (new AnswerKey("held-height-variant", 0), FactValue.Choice(variant)),
        (new AnswerKey("held-height-grip", 0), FactValue.Number(at.Grip.Metres)),
        (new AnswerKey("held-height-stance", 0), FactValue.Number(at.Stance.Metres)),
    ];
}
