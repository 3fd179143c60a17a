using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Explaining;

public sealed class TurningPointTests
{
    /// <summary>Steps tried on each side of a measured length: the whole accepted range of a stature would be a thousand.</summary>
    private const int Near = 50;

    [Fact]
    public void Each_turning_point_is_the_nearest_on_a_grid_as_fine_as_people_write()
    {
        var (found, none) = (0, 0);
        foreach (var question in Asked.People(9, 404).Where(q => q.Standing is null && Asked.Answer(q).Ranked.Count > 0).Take(2))
        {
            var points = TurningPointFinder.Find(Asked.Book, question);
            var decider = Decider.For(Asked.Book, question);
            foreach (var (key, answer) in question.Athlete.Answers.Where(a => Moves(question, a.Key, a.Value)))
            {
                foreach (var direction in new[] { 1, -1 })
                {
                    var told = points.Numbers.FirstOrDefault(p => p.Word.Id == key.Word && p.Side == (p.Word.Sided ? Sides.Names[key.Side] : null) && p.IsAbove == direction > 0);
                    var brute = Nearest(decider, question, key, answer.Value.Low, direction);
                    if (told is null || told.Distance > Near * Steps.Of(told.Word).Size)
                        brute.ShouldBeNull($"{question.Athlete.Id}, {key}, {direction}");
                    else
                        told.At.ShouldBe(brute!.Value, 1e-9, $"{question.Athlete.Id}, {key}, {direction}");
                    _ = brute is null ? none++ : found++;
                }
            }
        }
        found.ShouldBeGreaterThan(8);
        none.ShouldBeGreaterThan(20);
    }

    [Fact]
    public void At_a_turning_point_the_whole_answer_changes_and_one_step_before_it_does_not()
    {
        var checkedPoints = 0;
        foreach (var question in Asked.People(30, 8).Where(q => Asked.Answer(q).Ranked.Count > 0).Take(4))
        {
            var points = TurningPointFinder.Find(Asked.Book, question);
            foreach (var point in points.Numbers.Take(4))
            {
                var key = new AnswerKey(point.Word.Id, point.Side == "right" ? 1 : 0);
                First(question, key, point.At).ShouldBe(point.Becomes?.Id, $"{question.Athlete.Id}, {point.Label} at {point.At}");
                var before = point.At - ((point.IsAbove ? 1 : -1) * Steps.Of(point.Word).Size);
                if ((before - point.Now) * (point.IsAbove ? 1 : -1) > 0)
                    First(question, key, Math.Round(before, 9)).ShouldBe(points.First!.Id, $"{question.Athlete.Id}, {point.Label} before {point.At}");
                checkedPoints++;
            }
        }
        checkedPoints.ShouldBeGreaterThan(7);
    }

    [Fact]
    public void What_holds_or_hurts_is_never_moved_and_no_stop_of_today_is_moved_away()
    {
        foreach (var question in Asked.People(60, 12).Where(q => q.Standing is not null).Take(4).Concat(Asked.Club().Where(q => q.Athlete.Id is "p02" or "p04" or "p06" or "p16" or "p17")))
        {
            var answer = Asked.Answer(question);
            var points = TurningPointFinder.Find(Asked.Book, question);
            foreach (var word in points.Numbers.Select(p => p.Word).Concat(points.Answers.Select(a => a.Word)))
            {
                word.Groups.ShouldNotContain(g => g == "stop-questions" || g == "pain" || g == "must-answer" || g == "must-answer-under-18");
                word.Id.ShouldNotBeOneOf("age", "sex", "history", "guardian-consent", "open-referral", "health-questionnaire", "soreness-after-throwing");
            }
            points.Numbers.Select(p => p.Outcome).Concat(points.Answers.Select(a => a.Outcome)).ShouldAllBe(o => o >= answer.Outcome);
            if (answer.Outcome is not (Outcome.Ranked or Outcome.LimitedToday))
                points.Asked.ShouldBe(0);
        }
    }

    [Fact]
    public void Every_word_that_holds_an_athlete_says_why_it_is_left_out()
    {
        var vocabulary = Asked.Book.Vocabulary;
        foreach (var group in new[] { "stop-questions", "pain", "must-answer", "must-answer-under-18" })
            vocabulary.InGroup(group).ShouldAllBe(w => Changeable.WhyNot(vocabulary, w) != null);
        foreach (var id in new[] { "age", "sex", "history", "guardian-consent", "qualified-adult-present", "open-referral", "health-questionnaire", "poor-sleep-or-heavy-fatigue", "over-throwing-limit" })
            Changeable.WhyNot(vocabulary, vocabulary[id]).ShouldNotBeNull(id);
        Changeable.WhyNot(vocabulary, vocabulary["hip-flexion"]).ShouldBeNull();
    }

    [Fact]
    public void The_same_question_gives_the_same_turning_points()
    {
        var question = Asked.Club().First(q => q.Athlete.Id == "p14");
        TurningPointFinder.Find(Asked.Book, question).Numbers.ShouldBe(TurningPointFinder.Find(Asked.Book, question).Numbers);
    }

    private static bool Moves(Question question, AnswerKey key, Answer answer)
    {
        var word = Asked.Book.Vocabulary[key.Word];
        return word.Kind == WordKind.Number && answer.Value.IsExact && Changeable.WhyNot(Asked.Book.Vocabulary, word) is null && Asked.Selector.GatherFacts(question.Athlete, question)[word.Slot + key.Side].IsExact;
    }

    private static double? Nearest(Decider decider, Question question, AnswerKey key, double now, int direction)
    {
        var word = Asked.Book.Vocabulary[key.Word];
        var steps = Steps.Of(word);
        var start = direction > 0 ? steps.AtOrBelow(now) : steps.AtOrAbove(now);
        for (var step = start + direction; steps[step] >= word.Range!.Value.Low - 1e-9 && steps[step] <= word.Range.Value.High + 1e-9 && Math.Abs(steps[step] - now) <= Near * steps.Size; step += direction)
        {
            var decision = decider.Decide(Edited.Change(question.Athlete, [(key, FactValue.Number(steps[step]))]));
            if (!decision.SameChoice(decider.Base))
                return decision.Outcome < decider.Base.Outcome ? null : steps[step];
        }
        return null;
    }

    private static string? First(Question question, AnswerKey key, double value)
    {
        var answer = Asked.Answer(question with { Athlete = Edited.Change(question.Athlete, [(key, FactValue.Number(value))]) });
        return answer.Ranked.Count > 0 ? answer.Ranked[0].Candidate.Variant.Id : null;
    }
}
