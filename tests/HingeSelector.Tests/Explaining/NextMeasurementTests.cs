using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Explaining;

public sealed class NextMeasurementTests
{
    [Fact]
    public void The_chance_is_the_share_of_plausible_values_with_another_first_choice_counted_one_by_one()
    {
        var (changing, idle) = (0, 0);
        foreach (var question in Asked.People(40, 66, 0.25).Where(q => Asked.Answer(q).Ranked.Count > 0).Take(4))
        {
            var next = NextMeasurementFinder.Find(Asked.Book, question);
            var facts = Asked.Selector.GatherFacts(question.Athlete, question);
            var spreads = new Spreads(Asked.Book, question, facts);
            var before = First(Asked.Answer(question));
            foreach (var measure in next.Measures.Where(m => m.Chance is not null && m.Word.Id != "held-height").DistinctBy(m => m.Chance > 0))
            {
                var plausible = spreads.Of(measure.Word)!;
                var others = plausible.Values.Count(v => First(Asked.Answer(question with { Athlete = Edited.Answer(question.Athlete, plausible.Answers(v), question.On) })) != before);
                measure.Chance!.Value.ShouldBe((double)others / plausible.Values.Count, 1e-9, $"{question.Athlete.Id}, {measure.Word.Id}");
                _ = others > 0 ? changing++ : idle++;
            }
        }
        changing.ShouldBeGreaterThan(0);
        idle.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void The_held_height_is_one_of_the_measures_and_is_asked_at_the_heights_of_the_room()
    {
        var weighed = 0;
        foreach (var question in Asked.People(40, 91).Where(q => q.Room is not null && q.Athlete.Find("held-height") is null && Asked.Answer(q).Ranked.Count > 0).Take(4))
        {
            var measure = NextMeasurementFinder.Find(Asked.Book, question).Measures.FirstOrDefault(m => m.Word.Id == "held-height");
            measure.ShouldNotBeNull(question.Athlete.Id);
            measure.Minutes.ShouldBe(2);
            weighed += measure.Chance is not null ? 1 : 0;
        }
        weighed.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Nothing_is_said_to_change_the_choice_exactly_when_nothing_does()
    {
        var (nothing, something) = (0, 0);
        foreach (var question in Asked.Club().Where(q => q.Athlete.Id is "p01" or "p03" or "p07" or "p14" or "p19"))
        {
            var next = NextMeasurementFinder.Find(Asked.Book, question);
            next.NothingWould.ShouldBe(next.Measures.All(m => m.Becomes.Count == 0 && m.Chance is null or 0 && m.Examples.Count == 0));
            _ = next.NothingWould ? nothing++ : something++;
        }
        nothing.ShouldBeGreaterThan(0);
        something.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Stop_questions_pain_history_and_consent_are_no_measures_and_a_refusal_is_not_asked_again()
    {
        foreach (var question in Asked.People(6, 3, 0.5))
        {
            foreach (var measure in NextMeasurementFinder.Find(Asked.Book, question).Measures)
                Changeable.WhyNot(Asked.Book.Vocabulary, measure.Word).ShouldBeNull(measure.Word.Id);
        }
        var one = Asked.Club().First(q => q.Athlete.Id == "p14");
        var refusing = one with { Athlete = Edited.Change(one.Athlete, [(new AnswerKey("grip-strength", 0), FactValue.Unknown(FactState.Refused)), (new AnswerKey("grip-strength", 1), FactValue.Unknown(FactState.Refused))]) };
        var next = NextMeasurementFinder.Find(Asked.Book, refusing);
        next.Refused.ShouldContain("Grip strength");
        next.Measures.ShouldNotContain(m => m.Word.Id == "grip-strength");
    }

    [Fact]
    public void Quantiles_are_those_of_the_normal_spread()
    {
        // Known values of the inverse of the normal distribution.
        Quantiles.Standard(0.5).ShouldBe(0, 1e-9);
        Quantiles.Standard(0.975).ShouldBe(1.959963985, 1e-8);
        Quantiles.Standard(0.01).ShouldBe(-2.326347874, 1e-8);
        Quantiles.Standard(0.8413447461).ShouldBe(1, 1e-8);
    }

    private static (Outcome, int?) First(Recommendation answer) => (answer.Outcome, answer.Ranked.Count > 0 ? answer.Ranked[0].Candidate.Variant.Index : null);
}
