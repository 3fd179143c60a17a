using HingeSelector.Diagnostics;
using HingeSelector.Explaining;
using HingeSelector.Quantities;
using HingeSelector.Recommending;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Explaining;

public sealed class WhatIfTests
{
    private static readonly LoopEvaluator _loop = new(Asked.Book);

    [Fact]
    public void The_answer_after_a_change_is_that_of_the_changed_screen()
    {
        foreach (var question in Asked.Club().Where(q => Asked.Answer(q).Ranked.Count > 0).Take(8))
        {
            var whatIf = Ask(question, "hip-flexion both=96 deg", "gives-first=grip")!;
            var direct = Asked.Answer(question with
            {
                Athlete = Edited.Answer(question.Athlete, [(new AnswerKey("hip-flexion", 0), FactValue.Number(96)), (new AnswerKey("hip-flexion", 1), FactValue.Number(96)), (new AnswerKey("gives-first", 0), FactValue.Choice(Asked.Book.Vocabulary["gives-first"].Values.ToList().IndexOf("grip")))], question.On),
            });
            whatIf.Difference.After.Ranked.Select(r => (r.Candidate.Variant.Id, r.Score)).ShouldBe(direct.Ranked.Select(r => (r.Candidate.Variant.Id, r.Score)));
            whatIf.Difference.Before.Ranked.Select(r => r.Score).ShouldBe(Asked.Answer(question).Ranked.Select(r => r.Score));
        }
    }

    [Fact]
    public void A_change_to_what_is_on_file_changes_nothing()
    {
        var question = P14;
        Ask(question, "hinge-control=keeps")!.Difference.IsEmpty.ShouldBeTrue();
        Ask(question, "hinge-control=loses")!.Difference.IsEmpty.ShouldBeFalse();
    }

    [Theory]
    [InlineData("p04")]
    [InlineData("p06")]
    [InlineData("p10")]
    [InlineData("p02")]
    [InlineData("p16")]
    [InlineData("p17")]
    public void What_holds_is_not_answered_away(string id)
    {
        var question = Asked.Club().First(q => q.Athlete.Id == id);
        var answer = Asked.Answer(question);
        var words = answer.Stops.SelectMany(s => s.Trace.Facts).Select(f => f.Word.Split(',')[0]).Concat(answer.Unanswered.Select(u => u.Word))
            .Select(w => Asked.Book.Vocabulary.Find(w)).OfType<Word>().Where(w => w.Kind == WordKind.Choice && w.Values is ["no", "yes"] && w.IsMeasured).ToList();
        foreach (var word in words)
        {
            var bag = new DiagnosticBag();
            WhatIf.Ask(Asked.Book, _loop, question, [$"{word.Id}={(word.Id is "guardian-consent" or "qualified-adult-present" ? "yes" : "no")}"], bag).ShouldBeNull($"{id}, {word.Id}");
            bag.Sorted.ShouldContain(d => d.Id == "HS6004");
        }
    }

    [Fact]
    public void More_pain_may_be_tried_and_shows_its_stop()
    {
        var whatIf = Ask(P14, "low-back-pain-worst=6 points")!;
        whatIf.Difference.NewStops.ShouldNotBeEmpty();
        whatIf.Difference.After.Outcome.ShouldBe(Outcome.LimitedToday);
    }

    [Fact]
    public void No_safety_answer_ever_loosens_what_holds()
    {
        var (refused, told) = (0, 0);
        var random = new Random(4);
        foreach (var question in Asked.People(40, 19).Concat(Asked.Club()))
        {
            var words = Asked.Book.Vocabulary.Words.Where(w => w.IsMeasured && w.Kind is WordKind.Choice or WordKind.Number && w.Dimension != Dimension.Time && Changeable.WhyNot(Asked.Book.Vocabulary, w) is not null).ToList();
            for (var i = 0; i < 4; i++)
            {
                var word = words[random.Next(words.Count)];
                var value = word.Kind == WordKind.Choice ? word.Values[random.Next(word.Values.Count)] : word.Print(random.Next(0, 8));
                var bag = new DiagnosticBag();
                var whatIf = WhatIf.Ask(Asked.Book, _loop, question, [$"{word.Id}{(word.Sided ? " both" : "")}={value}"], bag);
                if (whatIf is null)
                {
                    refused++;
                    continue;
                }
                told++;
                ((int)whatIf.Difference.After.Outcome).ShouldBeGreaterThanOrEqualTo((int)whatIf.Difference.Before.Outcome, $"{question.Athlete.Id}, {word.Id}={value}");
                if (whatIf.Difference.After.Outcome != Outcome.Emergency)
                    whatIf.Difference.GoneStops.ShouldBeEmpty($"{question.Athlete.Id}, {word.Id}={value}");
            }
        }
        told.ShouldBeGreaterThan(100);
        refused.ShouldBeGreaterThan(3);
    }

    [Fact]
    public void Kit_of_the_room_can_be_taken_away_and_counted_otherwise()
    {
        var question = P14;
        var first = Asked.Answer(question).Ranked[0].Candidate.Variant.Id;
        first.ShouldStartWith("hex");
        var whatIf = Ask(question, "hex-bars=0")!;
        whatIf.Difference.Lost.ShouldContain(l => l.Variant.Id == first);
        whatIf.Difference.FirstAfter!.Id.ShouldNotStartWith("hex");
        Faults(question, "hex-bars=2.5").ShouldContain("HS5023");
        Faults(question with { Room = question.Room! with { HexBars = [] } }, "hex-bars=1").ShouldContain("HS6003");
        Faults(question with { Room = null }, "hex-bars=0").ShouldContain("HS6002");
    }

    [Theory]
    [InlineData("hinge-contrl=keeps", "HS2001")]
    [InlineData("hinge-control=keep", "HS2002")]
    [InlineData("hip-flexion=100 deg", "HS5008")]
    [InlineData("hip-flexion lft=100 deg", "HS2009")]
    [InlineData("hip-flexion left=100 kg", "HS2003")]
    [InlineData("stature=3 m", "HS2004")]
    [InlineData("stature left=180 cm", "HS5015")]
    [InlineData("hip-spare=3 deg", "HS5017")]
    [InlineData("name=Somebody", "HS5017")]
    [InlineData("hinge-control", "HS6001")]
    public void A_faulty_change_gives_one_clear_error_at_its_place(string text, string id)
    {
        var bag = new DiagnosticBag();
        WhatIf.Ask(Asked.Book, _loop, P14, [text], bag).ShouldBeNull();
        var fault = bag.Sorted.Where(d => d.Severity == Severity.Error).ShouldHaveSingleItem();
        fault.Id.ShouldBe(id);
        fault.Span.ToString().ShouldStartWith("argument-1:1:");
    }

    [Fact]
    public void One_fact_cannot_be_two_things_at_once()
        => Faults(P14, "hinge-control=keeps", "hinge-control=loses").ShouldContain("HS6005");

    private static Question P14 => Asked.Club().First(q => q.Athlete.Id == "p14") with { Standing = null };

    private static WhatIf? Ask(Question question, params string[] texts)
    {
        var bag = new DiagnosticBag();
        var whatIf = WhatIf.Ask(Asked.Book, _loop, question, texts, bag);
        whatIf.ShouldNotBeNull(DiagnosticPrinter.Print(bag.Sorted));
        return whatIf;
    }

    private static IReadOnlyList<string> Faults(Question question, params string[] texts)
    {
        var bag = new DiagnosticBag();
        WhatIf.Ask(Asked.Book, _loop, question, texts, bag).ShouldBeNull();
        return [.. bag.Sorted.Select(d => d.Id)];
    }
}
