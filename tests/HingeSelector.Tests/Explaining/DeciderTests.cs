using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Explaining;

public sealed class DeciderTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    public void The_lean_decision_is_that_of_the_selector(double gaps)
    {
        var ranked = 0;
        foreach (var question in Asked.People(250, 31, gaps))
        {
            var answer = Asked.Answer(question);
            Same(Decider.For(Asked.Book, question).Base, answer, question.Athlete.Id);
            ranked += answer.Ranked.Count > 0 ? 1 : 0;
        }
        // A run in which next to nobody may pull would prove little.
        ranked.ShouldBeGreaterThan(120);
    }

    [Fact]
    public void The_demo_club_is_decided_alike()
    {
        foreach (var question in Asked.Club())
            Same(Decider.For(Asked.Book, question).Base, Asked.Answer(question), question.Athlete.Id);
    }

    [Fact]
    public void A_changed_answer_is_decided_alike_whether_or_not_the_postures_stay()
    {
        var random = new Random(5);
        var (kept, moved) = (0, 0);
        foreach (var question in Asked.People(60, 77, 0.1))
        {
            var decider = Decider.For(Asked.Book, question);
            for (var i = 0; i < 6; i++)
            {
                var (key, answer) = question.Athlete.Answers.ElementAt(random.Next(question.Athlete.Answers.Count));
                var word = Asked.Book.Vocabulary[key.Word];
                var value = word.Kind == WordKind.Number && word.Range is { } range ? FactValue.Number(range.Low + (random.NextDouble() * (range.High - range.Low))) : FactValue.Of(1UL << random.Next(Math.Max(1, word.Values.Count)));
                var athlete = question.Athlete with { Answers = new Dictionary<AnswerKey, Answer>(question.Athlete.Answers) { [key] = answer with { Value = value } } };
                Same(decider.Decide(athlete), Asked.Answer(question with { Athlete = athlete }), $"{question.Athlete.Id}, {key} {word.Print(value)}");
                _ = Postures.Words.Contains(word.Id) ? moved++ : kept++;
            }
        }
        kept.ShouldBeGreaterThan(50);
        moved.ShouldBeGreaterThan(20);
    }

    private static void Same(Decision lean, Recommendation whole, string who)
    {
        lean.Outcome.ShouldBe(whole.Outcome, who);
        lean.First.ShouldBe(whole.Ranked.Count > 0 ? whole.Ranked[0].Candidate.Variant.Index : -1, who);
        foreach (var ranked in whole.Ranked)
            lean.Totals[ranked.Candidate.Variant.Index].ShouldBe(ranked.Score, $"{who}, {ranked.Candidate.Variant.Id}");
        if (whole.Outcome is Outcome.Ranked or Outcome.LimitedToday)
            lean.Excluded.ShouldBe(whole.Excluded.Aggregate(0UL, (bits, e) => bits | (1UL << e.Variant.Index)), who);
    }
}
