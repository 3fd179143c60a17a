using HingeSelector.Rules.Evaluating;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Population;

/// <summary>No favourite by default, and no rule that is there for show, over all people of the survey.</summary>
public sealed class FirstChoicesTests
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    [Fact]
    public void Every_rule_fires_for_someone_and_not_for_everyone_and_no_variant_is_the_favourite()
    {
        var book = RepositoryFiles.Book;
        // The loop evaluator, which agrees with the network on every answer and takes half the time.
        var choices = new FirstChoices(book, new LoopEvaluator(book), [book.Philosophies["balanced"]], _day);
        foreach (var athlete in SurveyPeople.Draw(book.Vocabulary, _day, SurveyPeople.Seed))
            choices.Ask(athlete);

        choices.People.ShouldBe(4277);
        choices.ForNobody.Select(r => r.Id).ShouldBeEmpty();
        choices.ForEverybody.Select(r => r.Id).ShouldBeEmpty();
        (choices.Ranked / (double)choices.People).ShouldBeGreaterThanOrEqualTo(0.9);
        foreach (var variant in book.Variants)
        {
            choices.First(0, variant.Index).ShouldBeLessThanOrEqualTo(50, variant.Id);
            if (variant.NeverFirst is null)
                choices.First(0, variant.Index).ShouldBeGreaterThanOrEqualTo(0.5, variant.Id);
        }
    }
}
