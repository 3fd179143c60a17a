using HingeSelector.Rules;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Rules.Firing;

public sealed class AgreementTests
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    [Fact]
    public void Network_loop_and_naive_interpreter_agree_on_every_operator()
    {
        var trio = new Trio(EveryOperator.Files);
        for (var seed = 0; seed < 600; seed++)
            trio.Difference(seed).ShouldBeNull($"case {seed}");
        trio.Tally.RulesFired.ShouldBe(trio.Book.Rules.Count);
        trio.Tally.RulesOpen.ShouldBeGreaterThan(trio.Book.Rules.Count - 2);
        trio.Tally.Absent.ShouldBeGreaterThan(500);
    }

    [Fact]
    public void Network_loop_and_naive_interpreter_agree_on_the_shipped_rules()
    {
        var trio = new Trio(RulesFolder.Shipped);
        for (var seed = 0; seed < 300; seed++)
            trio.Difference(seed).ShouldBeNull($"case {seed}");
        trio.Tally.RulesFired.ShouldBeGreaterThan(trio.Book.Rules.Count * 9 / 10);
    }

    // The whole survey is a benchmark run; these are one in sixty of it, spread over all of it.
    [Fact]
    public void Network_loop_and_naive_interpreter_give_people_of_the_survey_the_same_answers()
    {
        var trio = new Trio(RulesFolder.Shipped);
        var survey = new SurveyTrio(trio, _day);
        var people = SurveyPeople.Draw(trio.Book.Vocabulary, _day, SurveyPeople.Seed).Select((athlete, place) => (athlete, place)).Where(p => p.place % 60 == 0);
        foreach (var (athlete, place) in people)
            survey.Difference(athlete, place).ShouldBeNull(athlete.Id);
        trio.Tally.Cases.ShouldBe(72);
        survey.Candidates.ShouldBeGreaterThan(500);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_fault_in_any_of_the_three_shows_on_people_of_the_survey(int faulty)
    {
        RuleFiles[] files = [RulesFolder.Shipped, RulesFolder.Shipped, RulesFolder.Shipped];
        files[faulty] = Younger();
        var trio = new Trio(files[0], files[1], files[2]);
        var survey = new SurveyTrio(trio, _day);
        SurveyPeople.Draw(trio.Book.Vocabulary, _day, SurveyPeople.Seed, 60).Select(survey.Difference).Any(d => d is not null).ShouldBeTrue();
    }

    private static RuleFiles Younger()
    {
        var texts = RulesFolder.Shipped.Texts.ToDictionary(t => t.Key, t => t.Value.Replace("age: below 18 years", "age: below 40 years", StringComparison.Ordinal), StringComparer.Ordinal);
        texts.Any(t => t.Value != RulesFolder.Shipped.Texts[t.Key]).ShouldBeTrue();
        return new RuleFiles(texts);
    }
}
