using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

public sealed class FactTableTests
{
    [Fact]
    public void A_table_has_one_value_for_every_slot()
        => Screens.Table("sex: male").Length.ShouldBe(Repository.Vocabulary.AthleteSlots);

    [Theory]
    [InlineData(42, "80 deg")]
    [InlineData(43, "expired")]
    public void A_measure_counts_to_the_last_day_of_its_lifetime(int age, string expected)
        => Screens.Table($"screen: {{date: {Screens.Day(-age)}, straight-leg-raise: {{left: 80, right: 84}}}}").Show("straight-leg-raise", "worse").ShouldBe(expected);

    [Theory]
    [InlineData(0, "no")]
    [InlineData(-1, "expired")]
    public void A_stop_question_counts_on_its_day_only(int day, string expected)
        => Screens.Table($"day: {{date: {Screens.Day(day)}, fever-or-illness: no}}").Show("fever-or-illness").ShouldBe(expected);

    [Fact]
    public void A_last_day_given_with_an_answer_replaces_the_lifetime()
    {
        Screens.Table($"athlete: {{guardian-consent: {{value: yes, on: {Screens.Day(-600)}, until: {Screens.Day(0)}}}}}").Show("guardian-consent").ShouldBe("yes");
        Screens.Table($"athlete: {{guardian-consent: {{value: yes, on: {Screens.Day(-10)}, until: {Screens.Day(-1)}}}}}").Show("guardian-consent").ShouldBe("expired");
    }

    [Fact]
    public void A_refusal_that_has_run_out_leaves_nothing_behind()
        => Screens.Table($"day: {{date: {Screens.Day(-1)}, fever-or-illness: refused}}").At("fever-or-illness").ShouldBe(FactValue.Missing);

    [Theory]
    // left, right -> worse, better, gap; low is worse in a straight-leg raise
    [InlineData("80", "84", "80 deg", "84 deg", "4 deg")]
    [InlineData("84", "80", "80 deg", "84 deg", "4 deg")]
    [InlineData("80", "", "at most 80 deg", "at least 80 deg", "not measured")]
    [InlineData("", "84", "at most 84 deg", "at least 84 deg", "not measured")]
    [InlineData("80", "refused", "at most 80 deg", "at least 80 deg", "refused")]
    [InlineData("80", "not applicable", "80 deg", "80 deg", "not applicable")]
    [InlineData("not applicable", "not applicable", "not applicable", "not applicable", "not applicable")]
    [InlineData("not applicable", "refused", "refused", "refused", "not applicable")]
    [InlineData("refused", "refused", "refused", "refused", "refused")]
    [InlineData("refused", "", "not measured", "not measured", "not measured")]
    public void Two_sides_make_worse_better_and_gap(string left, string right, string worse, string better, string gap)
    {
        var table = Screens.Table($"screen: {{date: {Screens.Day(0)}, straight-leg-raise: {{left: {left}, right: {right}}}}}");
        table.Show("straight-leg-raise", "worse").ShouldBe(worse);
        table.Show("straight-leg-raise", "better").ShouldBe(better);
        table.Show("straight-leg-raise", "gap").ShouldBe(gap);
    }

    [Theory]
    [InlineData("1", "3", "3 points", "1 points")]
    [InlineData("", "3", "at least 3 points", "at most 3 points")]
    public void Where_high_is_worse_the_bounds_turn_round(string left, string right, string worse, string better)
    {
        var table = Screens.Table($"day: {{date: {Screens.Day(0)}, elbow-pain-worst: {{left: {left}, right: {right}}}}}");
        table.Show("elbow-pain-worst", "worse").ShouldBe(worse);
        table.Show("elbow-pain-worst", "better").ShouldBe(better);
    }

    [Theory]
    [InlineData("throwing-side: left", "20 kg", "30 kg")]
    [InlineData("throwing-side: right", "30 kg", "20 kg")]
    [InlineData("throwing-side: ", "not decided", "not decided")]
    [InlineData("throwing-side: refused", "not decided", "not decided")]
    public void The_throwing_side_needs_to_be_known(string side, string throwing, string other)
    {
        var table = Screens.Table($"{{date: {Screens.Day(0)}, {side}, grip-strength: {{left: 20, right: 30}}}}");
        table.Show("grip-strength", "throwing").ShouldBe(throwing);
        table.Show("grip-strength", "other").ShouldBe(other);
    }

    [Theory]
    [InlineData("17", "165", "167", "expired", "2 cm")]
    [InlineData("17", "165", "166.9", "80 deg", "1.9 cm")]
    [InlineData("18", "165", "167", "80 deg", "2 cm")]
    [InlineData("17", "163.5", "165.5", "expired", "2 cm")]
    public void Growth_of_a_minor_ends_measures_of_the_smaller_body(string age, string before, string now, string measure, string grown)
    {
        var table = Screens.Table($$"""
            athlete: {age: {{age}}, stature: {{before}} }
            screen: {date: {{Screens.Day(-20)}}, straight-leg-raise: {left: 80, right: 80}, hinge-control: keeps}
            day: {date: {{Screens.Day(0)}}, stature-now: {{now}} }
            """);
        table.Show("straight-leg-raise", "worse").ShouldBe(measure);
        table.Show("hinge-control").ShouldBe("keeps");
        table.Show("grown-since-screen").ShouldBe(grown);
    }

    [Fact]
    public void A_measure_of_the_grown_body_stays()
    {
        var table = Screens.Table($$"""
            athlete: {age: 15, stature: {value: 165, on: {{Screens.Day(-40)}} } }
            screen: {date: {{Screens.Day(-1)}}, straight-leg-raise: {left: 80, right: 80} }
            day: {date: {{Screens.Day(0)}}, stature-now: {value: 168, on: {{Screens.Day(-1)}} } }
            """);
        table.Show("straight-leg-raise", "worse").ShouldBe("80 deg");
        table.Show("stature").ShouldBe("expired");
    }

    [Theory]
    [InlineData("no", "150 kg", "100 kg", "1.5 x body mass")]
    [InlineData("yes", "150 kg", "100 kg", "not decided")]
    [InlineData("", "150 kg", "100 kg", "not decided")]
    [InlineData("no", "150 kg", "refused", "not decided")]
    [InlineData("no", "", "100 kg", "not decided")]
    public void Relative_strength_needs_a_lift_without_straps(string straps, string lifted, string mass, string expected)
        => Screens.Table($"{{tested-1rm: {lifted}, tested-1rm-straps: {straps}, mass: {mass}}}").Show("relative-strength").ShouldBe(expected);

    [Theory]
    [InlineData("24 hours", "right", "8 deg", "6 deg", "9 deg")]
    [InlineData("23 hours", "right", "not decided", "not decided", "not decided")]
    [InlineData("", "right", "not decided", "not decided", "not decided")]
    [InlineData("3 days", "", "not decided", "not decided", "not decided")]
    public void Losses_are_read_on_a_rested_throwing_side(string hours, string side, string flexion, string rotation, string arc)
    {
        var table = Screens.Table($$"""
            athlete: {throwing-side: {{side}}, shoulder-flexion-baseline: 176, shoulder-internal-rotation-baseline: 50, shoulder-external-rotation-baseline: 115}
            screen:
              date: {{Screens.Day(0)}}
              hours-since-hard-throwing: {{hours}}
              shoulder-flexion: {left: 174, right: 168}
              shoulder-internal-rotation: {left: 60, right: 44}
              shoulder-external-rotation: {left: 100, right: 112}
            """);
        table.Show("shoulder-flexion-loss").ShouldBe(flexion);
        table.Show("internal-rotation-loss").ShouldBe(rotation);
        table.Show("rotation-arc-loss").ShouldBe(arc);
    }

    [Theory]
    [InlineData("", "none", "elbow-operation", "not applicable")]
    [InlineData("2026-09-01 2026-12-31 60", "valid", "none", "60 kg")]
    [InlineData("2026-09-01 2026-11-24 60", "valid", "none", "60 kg")]
    [InlineData("2026-09-01 2026-11-23 60", "expired", "elbow-operation", "not applicable")]
    [InlineData("2026-11-25 2026-12-31 60", "not-yet-valid", "elbow-operation", "not applicable")]
    [InlineData("2026-09-01 2026-11-23 60|2026-11-25 2026-12-31 60", "not-yet-valid", "elbow-operation", "not applicable")]
    [InlineData("2026-09-01 2026-12-31 60|2026-09-01 2026-12-31 40", "valid", "none", "40 kg")]
    [InlineData("2026-09-01 2026-12-31 60|2026-09-01 2026-10-31 20", "valid", "none", "60 kg")]
    [InlineData("2026-09-01 2026-12-31", "valid", "none", "not applicable")]
    public void Clearances_count_between_their_dates(string letters, string state, string notCleared, string cap)
    {
        var yaml = "history: elbow-operation right\nclearances:\n";
        foreach (var letter in letters.Split('|', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(' ')))
            yaml += $"  - {{who: A, profession: surgeon, date: {letter[0]}, valid-until: {letter[1]}, for: elbow-operation right, covers: [load-in-hand], cap: {letter.ElementAtOrDefault(2)}, letter-seen-by: B}}\n";
        var table = Screens.Table(yaml);
        table.Show("letter", state).ShouldBe("elbow-operation");
        table.Show("not-cleared", "load-in-hand").ShouldBe(notCleared);
        table.Show("not-cleared", "spinal-load").ShouldBe("elbow-operation");
        table.Show("clearance-load-cap").ShouldBe(cap);
    }

    [Theory]
    [InlineData("elbow-operation right", "elbow-operation right", "none")]
    [InlineData("elbow-operation right", "elbow-operation left", "elbow-operation")]
    [InlineData("elbow-operation left + elbow-operation right", "elbow-operation right", "elbow-operation")]
    [InlineData("elbow-operation left + elbow-operation right", "elbow-operation left + elbow-operation right", "none")]
    [InlineData("elbow-operation", "elbow-operation left + elbow-operation right", "elbow-operation")]
    [InlineData("spine-operation + knee-operation left", "knee-operation left", "spine-operation")]
    [InlineData("spine-operation + knee-operation left", "spine-operation", "knee-operation")]
    [InlineData("none", "knee-operation left", "none")]
    [InlineData("refused", "knee-operation left", "not decided")]
    public void A_letter_opens_what_it_names_and_nothing_else(string history, string about, string notCleared)
        => Screens.Table($"history: {history}\nclearances:\n  - {{who: A, profession: surgeon, date: 2026-09-01, valid-until: 2026-12-31, for: {about}, covers: [spinal-load], letter-seen-by: B}}\n")
            .Show("not-cleared", "spinal-load").ShouldBe(notCleared);

    [Theory]
    [InlineData("elbow-operation left", "right", "elbow-operation", "none", "none", "elbow-operation")]
    [InlineData("elbow-operation left + hernia", "left", "elbow-operation", "none", "elbow-operation", "none")]
    [InlineData("elbow-operation", "right", "elbow-operation", "elbow-operation", "elbow-operation", "elbow-operation")]
    [InlineData("elbow-operation", "", "elbow-operation", "elbow-operation", "elbow-operation", "elbow-operation")]
    [InlineData("elbow-operation left", "", "elbow-operation", "none", "not decided", "not decided")]
    [InlineData("elbow-operation left", "not applicable", "elbow-operation", "none", "not applicable", "not applicable")]
    [InlineData("refused", "left", "refused", "refused", "refused", "refused")]
    public void A_history_has_sides_and_counts_on_both_where_none_is_named(string history, string throws, string left, string right, string throwing, string other)
    {
        var table = Screens.Table($"history: {history}\nthrowing-side: {throws}\n");
        new[] { "left", "right", "throwing", "other" }.Select(r => table.Show("history", r)).ShouldBe([left, right, throwing, other]);
    }
}
