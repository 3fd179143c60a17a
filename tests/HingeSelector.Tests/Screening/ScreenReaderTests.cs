using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

public sealed class ScreenReaderTests
{
    [Fact]
    public void Answers_take_date_and_name_from_their_section()
    {
        var record = Screens.Read("""
            id: p77
            athlete:
              name: K. Amadi
              stature: 5'11"
            screen:
              date: 2026-11-20
              measured-by: R. Idris
              straight-leg-raise: {left: 86, right: 84.5 deg}
            day:
              date: 2026-11-24
              asked-by: T. Bell
              fever-or-illness: no
            """);
        record.Id.ShouldBe("p77");
        record.Name.ShouldBe("K. Amadi");
        record.ScreenDate.ShouldBe(new DateOnly(2026, 11, 20));
        record.Find("stature")!.Value.Low.ShouldBe(1.8034, 1e-12);
        var right = record.Find("straight-leg-raise", 1)!;
        right.Value.ShouldBe(FactValue.Number(84.5));
        right.On.ShouldBe(new DateOnly(2026, 11, 20));
        right.By.ShouldBe("R. Idris");
        right.Typed.ShouldBe("84.5 deg");
        (right.Span.Line, right.Span.Column, right.Span.Length).ShouldBe((7, 40, 8));
        record.Find("fever-or-illness")!.By.ShouldBe("T. Bell");
    }

    [Fact]
    public void Without_an_id_the_name_of_the_file_is_the_id()
        => Screens.Read("sex: male").Id.ShouldBe("p01");

    [Fact]
    public void Facts_without_sections_go_to_their_own_section()
    {
        var record = Screens.Read("""
            screen date: 2026-11-18
            day-date: 2026-11-24
            sex: female
            hinge-control: keeps
            fever-or-illness: yes
            """);
        record.Find("sex")!.On.ShouldBe(new DateOnly(2026, 11, 18));
        record.Find("hinge-control")!.On.ShouldBe(new DateOnly(2026, 11, 18));
        record.Find("fever-or-illness")!.On.ShouldBe(new DateOnly(2026, 11, 24));
    }

    [Fact]
    public void An_answer_may_carry_its_own_dates_and_name()
    {
        var record = Screens.Read("""
            athlete:
              date: 2026-09-01
              guardian-consent: {value: yes, until: 2027-06-30, by: P. Tindley}
            screen:
              date: 2026-11-20
              measured-by: R. Idris
              grip-strength: {left: {value: 57, on: 2026-11-10}, right: {value: 59, by: T. Bell}, on: 2026-11-12}
            """);
        record.Find("guardian-consent")!.ShouldSatisfyAllConditions(
            a => a.On.ShouldBe(new DateOnly(2026, 9, 1)),
            a => a.Until.ShouldBe(new DateOnly(2027, 6, 30)),
            a => a.By.ShouldBe("P. Tindley"));
        record.Find("grip-strength", 0)!.On.ShouldBe(new DateOnly(2026, 11, 10));
        record.Find("grip-strength", 0)!.By.ShouldBe("R. Idris");
        record.Find("grip-strength", 1)!.On.ShouldBe(new DateOnly(2026, 11, 12));
        record.Find("grip-strength", 1)!.By.ShouldBe("T. Bell");
    }

    [Fact]
    public void Refused_and_not_applicable_are_answers_and_not_measured_is_none()
    {
        var record = Screens.Read("""
            athlete:
              mass: refused
              stature: not measured
            screen:
              date: 2026-11-20
              grip-strength: {left: not applicable, right: 58}
              straight-leg-raise: refused
              knee-to-wall: {left: , right: 10}
            """);
        record.Find("mass")!.Value.State.ShouldBe(FactState.Refused);
        record.Find("stature").ShouldBeNull();
        record.Find("grip-strength", 0)!.Value.ShouldBe(FactValue.NotApplicable);
        record.Find("straight-leg-raise", 0)!.Value.State.ShouldBe(FactState.Refused);
        record.Find("straight-leg-raise", 1)!.Value.State.ShouldBe(FactState.Refused);
        record.Find("knee-to-wall", 0).ShouldBeNull();
    }

    [Theory]
    [InlineData("none", "none")]
    [InlineData("[]", "none")]
    [InlineData("[none]", "none")]
    [InlineData("hernia", "hernia")]
    [InlineData("hernia + eye-operation", "hernia + eye-operation")]
    [InlineData("[eye-operation, hernia]", "hernia + eye-operation")]
    public void A_set_is_a_list_a_sum_or_none(string typed, string expected)
        => Repository.Vocabulary["history"].Print(Screens.Read($"history: {typed}").Find("history")!.Value).ShouldBe(expected);

    [Theory]
    [InlineData("sex: Male")]
    [InlineData("sex: MALE")]
    [InlineData("sex: 'male'")]
    public void Capitals_and_quotes_do_not_matter_in_a_choice(string line)
        => Screens.Read(line).Find("sex")!.Value.ShouldBe(FactValue.Choice(1));

    [Theory]
    [InlineData("on")]
    [InlineData("off")]
    [InlineData("true")]
    [InlineData("y")]
    [InlineData("Yes")]
    [InlineData("NO")]
    [InlineData("~")]
    public void What_other_readers_turn_into_a_truth_value_is_refused(string typed)
        => Screens.Faults($"fever-or-illness: {typed}").Single().Id.ShouldBe("HS1012");

    [Fact]
    public void A_blanket_answers_its_group_and_nothing_else()
    {
        var record = Screens.Read("""
            day:
              date: 2026-11-24
              pain: none, asked by T. Bell on 2026-11-24
              elbow-pain-worst: {left: , right: 3}
            """);
        foreach (var word in Repository.Vocabulary.InGroup("pain").Where(w => w.Id != "elbow-pain-worst"))
        {
            record.Find(word.Id, 0)!.Value.ShouldBe(FactValue.Number(0), word.Id);
            record.Find(word.Id, 0)!.By.ShouldBe("T. Bell");
        }
        record.Find("elbow-pain-worst", 0)!.Value.ShouldBe(FactValue.Number(0));
        record.Find("elbow-pain-worst", 1)!.Value.ShouldBe(FactValue.Number(3));
        record.Find("soreness-after-throwing").ShouldBeNull();
        record.Find("fever-or-illness").ShouldBeNull();
    }

    [Fact]
    public void A_blanket_older_than_a_question_does_not_answer_it()
    {
        var record = Screens.Read("""
            day:
              stop-questions: all no, asked by T. Bell on 2025-12-31
            """, on: new DateOnly(2026, 1, 1));
        record.Answers.ShouldBeEmpty();
    }

    [Fact]
    public void A_refused_blanket_is_refused_word_by_word()
        => Screens.Read("day: {date: 2026-11-24, stop-questions: refused}").Find("recent-head-knock")!.Value.State.ShouldBe(FactState.Refused);

    [Theory]
    [InlineData("fever-or-illness: no", "2026-11-24")]
    [InlineData("{screen: {date: 2026-11-20}, day: {fever-or-illness: no}}", "2026-11-20")]
    [InlineData("{screen: {date: 2026-11-20}, day: {fever-or-illness: no, pain: 'none, asked by T. Bell on 2026-11-23'}}", "2026-11-23")]
    [InlineData("{athlete: {date: 2026-11-19}, day: {fever-or-illness: no}}", "2026-11-19")]
    public void A_day_without_a_date_is_never_later_than_the_file_itself(string yaml, string expected)
        => Dates.Print(Screens.Read(yaml).Find("fever-or-illness")!.On).ShouldBe(expected);

    [Fact]
    public void Clearances_are_read_whole()
    {
        var clearance = Screens.Read("""
            athlete:
              sex: male
            clearances:
              - {who: H. Brandt, profession: surgeon, date: 2026-10-28, valid until: 2027-01-31, for: shoulder-operation right, covers: [load-in-hand, spinal-load], cap: 20 kg, letter-seen-by: R. Idris}
            """).Clearances.Single();
        clearance.Who.ShouldBe("H. Brandt");
        clearance.ValidUntil.ShouldBe(new DateOnly(2027, 1, 31));
        clearance.For.ShouldBe(["shoulder-operation right"]);
        clearance.Covers.ShouldBe(["load-in-hand", "spinal-load"]);
        clearance.Cap.ShouldBe(20);
        clearance.SeenBy.ShouldBe("R. Idris");
    }

    [Fact]
    public void Facts_inside_another_file_need_no_dates()
    {
        var bag = new DiagnosticBag();
        var map = (HingeSelector.Reading.YamlMap)HingeSelector.Reading.YamlReader.Read(new SourceText("rule.yaml", "{straight-leg-raise: {left: 80 deg, right: 84 deg}, fever-or-illness: no}"), bag)!;
        var record = ScreenReader.ReadUndated(map, "example", Repository.Vocabulary, Repository.DemoDay, bag);
        bag.Sorted.ShouldBeEmpty();
        record!.Answers.Values.ShouldAllBe(a => a.On == Repository.DemoDay);
    }

    [Fact]
    public void A_byte_order_mark_does_not_move_columns()
    {
        var fault = Screens.Faults("\uFEFFsex: man").Single();
        fault.Span.Column.ShouldBe(5);
    }
}
