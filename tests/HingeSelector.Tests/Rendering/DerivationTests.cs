using HingeSelector.Cli;
using HingeSelector.Diagnostics;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rendering;

public class DerivationTests
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    [Fact]
    public void The_sum_of_points_is_the_score_for_every_candidate_of_the_demo_club()
    {
        var book = RepositoryFiles.Book;
        var engine = EngineOfRecord.For(book);
        var selector = new Selector(book, engine);
        var compared = 0;
        foreach (var question in Questions())
        {
            foreach (var ranked in selector.Choose(question).Ranked.Take(4))
            {
                var derivation = Derivation.Of(book, engine, question, ranked.Candidate.Variant);
                derivation.Total.ShouldBe(ranked.Score, $"{question.Athlete.Id}, {ranked.Candidate.Variant.Id}");
                derivation.Sums.Select(s => s.Clamped).ShouldBe(ranked.Points);
                derivation.Rules.ShouldAllBe(r => r.Conditions.Count == r.Rule.Conditions.Count);
                compared++;
            }
        }
        compared.ShouldBeGreaterThan(20);
    }

    [Fact]
    public void Every_answer_of_the_demo_club_can_be_told_in_every_form()
    {
        var book = RepositoryFiles.Book;
        var selector = new Selector(book, EngineOfRecord.For(book));
        foreach (var answer in Questions().Select(selector.Choose))
        {
            var lines = new AthleteText(book).Of(answer, 15).ToList();
            lines.SelectMany(PlainText.Rows).ShouldNotBeEmpty();
            MarkdownText.Of(lines).ShouldNotContain("HingeSelector.");
            new RosterText(book).Of(answer).Count().ShouldBeInRange(1, 10);
        }
    }

    [Fact]
    public void A_held_height_stands_beside_the_computed_one_in_the_variant_in_which_it_was_seen()
    {
        var book = RepositoryFiles.Book;
        var answer = new Selector(book, EngineOfRecord.For(book)).Choose(Questions().First(q => q.Athlete.Id == "p01"));
        var held = answer.Ranked.Select(r => (r.Candidate.Variant.Id, Held: HeldSeen.In(book, answer, r.Candidate))).Where(h => h.Held is not null).ToList();

        held.ShouldHaveSingleItem().Id.ShouldBe("conventional");
        held[0].Held!.Height.ShouldBe(0.34, 1e-9);
        held[0].Held!.ToString().ShouldStartWith("34 cm seen at the bar (grip 56 cm, stance 32 cm), ");
    }

    private static IEnumerable<Question> Questions()
    {
        var book = RepositoryFiles.Book;
        var bag = new DiagnosticBag();
        var roster = RosterReader.Read(RepositoryFiles.Source("content/demo/club.csv"), book.Vocabulary, _day, bag);
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), bag);
        bag.HasErrors.ShouldBeFalse();
        return roster.Good.Select(a => new Question(a, room, null, book.Philosophies["balanced"], _day));
    }
}
