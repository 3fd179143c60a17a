using HingeSelector.Body;
using HingeSelector.Explaining;
using HingeSelector.Quantities;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Explaining;

public sealed class HowSureTests
{
    private const int Few = 40;

    [Fact]
    public void The_count_is_that_of_the_whole_selector_over_the_same_draws()
    {
        var unsure = 0;
        foreach (var question in Asked.People(40, 21).Where(q => Asked.Answer(q).Ranked.Count > 0).Take(6))
        {
            var sure = HowSureCount.Count(Asked.Book, question, Few);
            var draws = new Draws(Asked.Book, question.Athlete);
            var firsts = Enumerable.Range(0, Few).Select(i =>
            {
                var (book, athlete) = draws[i];
                var answer = new Selector(book, new LoopEvaluator(book)).Choose(question with { Athlete = athlete });
                return answer.Ranked.Count > 0 ? answer.Ranked[0].Candidate.Variant.Id : null;
            }).ToList();
            foreach (var (variant, count) in sure.Counts)
                count.ShouldBe(firsts.Count(f => f == variant.Id), $"{question.Athlete.Id}, {variant.Id}");
            sure.NoPull.ShouldBe(firsts.Count(f => f is null));
            (sure.Counts.Sum(c => c.Count) + sure.NoPull).ShouldBe(Few);
            unsure += sure.OfHundred < 100 ? 1 : 0;
        }
        // If nothing ever came out otherwise, the draws would not be draws.
        unsure.ShouldBeGreaterThan(2);
    }

    [Fact]
    public void Under_sixty_of_a_hundred_there_is_no_clear_first()
    {
        var (first, other) = (Asked.Book.Variants[0], Asked.Book.Variants[1]);
        new HowSure(first, 1000, [(first, 600), (other, 400)], 0, false).IsClear.ShouldBeTrue();
        new HowSure(first, 1000, [(first, 599), (other, 401)], 0, false).IsClear.ShouldBeFalse();
        new HowSure(first, 1000, [(other, 401), (first, 599)], 0, false).OfHundred.ShouldBe(60);
    }

    [Fact]
    public void Draws_spread_as_stated_and_segments_go_together_as_in_the_survey()
    {
        const int many = 4000;
        var question = Asked.Club().First(q => q.Athlete.Find("thigh-length") is null && q.Athlete.Find("straight-leg-raise") is { Value.IsExact: true });
        var draws = new Draws(Asked.Book, question.Athlete);
        var drawn = Enumerable.Range(0, many).Select(i => draws[i]).ToList();
        var raise = drawn.Select(d => d.Athlete.Find("straight-leg-raise")!.Value.Low).ToList();
        raise.Average().ShouldBe(question.Athlete.Find("straight-leg-raise")!.Value.Low, 0.2);
        Deviation(raise).ShouldBe(2.4, 0.1);

        var (thigh, trunk) = (Ratios(drawn, SegmentName.Thigh), Ratios(drawn, SegmentName.TrunkToAcromion));
        Deviation(thigh).ShouldBe(0.0122, 0.0005);
        Correlation(thigh, trunk).ShouldBe(-0.75, 0.03);

        var slope = drawn.Select(d => d.Book.Model.Parameters.HamstringSlope).ToList();
        slope.Min().ShouldBeInRange(0.66, 0.67);
        slope.Max().ShouldBeInRange(0.91, 0.92);
        slope.Average().ShouldBe(0.79, 0.01);
    }

    [Fact]
    public void Ratings_and_answers_are_not_drawn()
    {
        var question = Asked.Club().First(q => q.Athlete.Id == "p14");
        var (_, athlete) = new Draws(Asked.Book, question.Athlete)[3];
        foreach (var (key, answer) in question.Athlete.Answers.Where(a => Asked.Book.Vocabulary[a.Key.Word] is { Dimension: Dimension.Rating } or { Kind: not WordKind.Number }))
            athlete.Answers[key].ShouldBe(answer);
        athlete.Answers.Count(a => a.Value != question.Athlete.Answers[a.Key]).ShouldBeGreaterThan(10);
    }

    [Fact]
    public void Nobody_is_counted_who_may_not_pull()
    {
        foreach (var question in Asked.Club().Where(q => q.Athlete.Id is "p02" or "p16" or "p17"))
            HowSureCount.Count(Asked.Book, question).Draws.ShouldBe(0);
    }

    private static List<double> Ratios(List<(HingeSelector.Rules.RuleBook Book, AthleteRecord Athlete)> drawn, SegmentName name) => [.. drawn.Select(d => d.Book.Model.Survey.Male.Ratios[name].Mean)];

    private static double Deviation(List<double> values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1));
    }

    private static double Correlation(List<double> a, List<double> b)
    {
        var (x, y) = (a.Average(), b.Average());
        return a.Zip(b).Sum(p => (p.First - x) * (p.Second - y)) / (a.Count - 1) / Deviation(a) / Deviation(b);
    }
}
