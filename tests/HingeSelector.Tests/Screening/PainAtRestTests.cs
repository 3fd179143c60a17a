using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Tests.Demo;
using HingeSelector.Tests.Support;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

/// <summary>What a clinician found: blanks that read as health, and a worst pain below the pain at rest.</summary>
public sealed class PainAtRestTests
{
    [Fact]
    public void The_worst_pain_is_at_least_the_pain_at_rest()
    {
        var table = Table("pain: none, asked by R. Idris on 2026-11-24", "elbow-pain-at-rest: {left: 2 points, right: 0 points}");
        table[RepositoryFiles.Book.Vocabulary["elbow-pain-worst"].Slot + Sides.Worse].Low.ShouldBe(2);
    }

    [Fact]
    public void A_pain_at_rest_without_a_worst_is_at_least_that_bad()
    {
        var worst = Table("elbow-pain-at-rest: {left: 3 points, right: 0 points}")[RepositoryFiles.Book.Vocabulary["elbow-pain-worst"].Slot + Sides.Worse];
        worst.Low.ShouldBe(3);
        worst.High.ShouldBe(10);
    }

    [Fact]
    public void Pain_or_history_that_was_not_asked_holds_the_athlete()
    {
        OneAthlete.Ask("pain:").Outcome.ShouldBe(Recommending.Outcome.Held);
        OneAthlete.Ask("pain:").Unanswered.ShouldHaveSingleItem().Word.ShouldBe("pain");
        OneAthlete.Ask("history:").Outcome.ShouldBe(Recommending.Outcome.Held);
    }

    [Fact]
    public void An_operation_does_not_go_away_because_nobody_asked_again()
    {
        OneAthlete.Ask("history: {value: spine-operation, on: 2024-01-01}").Outcome.ShouldBe(Recommending.Outcome.Refer);
        OneAthlete.Ask("history: {value: none, on: 2024-01-01}").Outcome.ShouldBe(Recommending.Outcome.Held);
    }

    private static FactValue[] Table(params string[] lines)
    {
        var bag = new DiagnosticBag();
        var athlete = ScreenReader.Read(new SourceText("athlete.yaml", "date: 2026-11-24\n" + string.Join('\n', lines)), RepositoryFiles.Book.Vocabulary, OneAthlete.Day, bag);
        bag.HasErrors.ShouldBeFalse(DiagnosticPrinter.Print(bag.Sorted));
        return FactTable.Build(athlete!, RepositoryFiles.Book.Vocabulary, OneAthlete.Day, null);
    }
}
