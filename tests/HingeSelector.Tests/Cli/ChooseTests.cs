using HingeSelector.Cli.Frame;
using HingeSelector.Rendering;

namespace HingeSelector.Tests.Cli;

public class ChooseTests
{
    [Fact]
    public void A_roster_of_good_rows_exits_with_zero_stops_and_holds_included()
    {
        var run = CliRun.Of(CliRun.Club);

        run.Code.ShouldBe(ExitCode.Done);
        run.Output.ShouldContain("EMERGENCY - call for help");
        run.Output.ShouldContain("REFER - no loaded pull until a clinician answers");
        run.Output.ShouldContain("HELD - not answered");
        run.Output.ShouldContain(": LIMITED TODAY");
        run.Output.ShouldContain(": RANKED");
        run.Output.ShouldContain("24 athletes: ");
    }

    [Theory]
    [InlineData("p01", 0)]
    [InlineData("p10", ExitCode.LimitedToday)]
    [InlineData("p17", ExitCode.Held)]
    [InlineData("p02", ExitCode.Refer)]
    [InlineData("p16", ExitCode.Emergency)]
    public void With_exit_level_the_outcome_is_in_the_exit_code(string athlete, int expected)
    {
        CliRun.Of([.. CliRun.Club, "--athlete", athlete, "--exit-level"]).Code.ShouldBe(expected);
        CliRun.Of([.. CliRun.Club, "--athlete", athlete]).Code.ShouldBe(ExitCode.Done);
    }

    [Theory]
    [InlineData("table")]
    [InlineData("markdown")]
    public void An_emergency_shows_nothing_but_the_stop(string format)
    {
        var run = CliRun.Of([.. CliRun.Club, "--athlete", "p16", "--format", format]);

        run.Output.ShouldContain("Call local emergency care now");
        foreach (var other in new[] { "Beware", "Open", "Remark", "points", "deadlift", "Stamp" })
            run.Output.ShouldNotContain(other);
    }

    [Fact]
    public void A_roster_with_bad_rows_reports_each_and_answers_the_good_ones()
    {
        var rows = File.ReadAllLines(Path.Combine(Support.RepositoryFiles.Root, CliRun.Roster));
        rows[2] = rows[2].Replace("female", "femal", StringComparison.Ordinal);
        rows[5] = rows[5].Replace(",15,", ",155,", StringComparison.Ordinal);
        var run = CliRun.Of(["choose", "--roster", "-", "--on", CliRun.Day], string.Join('\n', rows));

        run.Code.ShouldBe(ExitCode.BadInput);
        run.Error.ShouldContain("standard-input:3:");
        run.Error.ShouldContain("standard-input:6:");
        run.Output.ShouldContain("p01 K. Amadi: RANKED");
        run.Output.ShouldNotContain("p02");
        run.Output.ShouldContain("22 athletes: ");
        run.Output.ShouldContain("2 rows could not be read.");
    }

    [Fact]
    public void A_header_that_is_not_understood_gives_no_answer()
    {
        var run = CliRun.Of(["choose", "--roster", "-"], "id,statuer (cm)\np01,188\n");

        run.Code.ShouldBe(ExitCode.BadInput);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain("stature");
    }

    [Fact]
    public void Faults_of_several_files_are_told_in_one_run()
    {
        var folder = Directory.CreateTempSubdirectory("hinge-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "room.yaml"), "rooom: Hall\n");
            File.WriteAllText(Path.Combine(folder, "screen.yaml"), "athlete:\n  statuer: 188 cm\n");
            var run = CliRun.Of(["choose", "--home", Support.RepositoryFiles.Root, "--screen", "screen.yaml", "--room", "room.yaml"], "", folder: folder);

            run.Code.ShouldBe(ExitCode.BadInput);
            run.Output.ShouldBeEmpty();
            run.Error.ShouldContain("room.yaml:1:1");
            run.Error.ShouldContain("screen.yaml:2:3");
            run.Error.ShouldNotContain(folder);
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Theory]
    [InlineData("no-such-file.yaml", "there is no such file")]
    [InlineData("content", "it is a folder")]
    public void A_file_that_cannot_be_read_is_bad_input(string path, string why)
    {
        var run = CliRun.Of("choose", "--screen", path);

        run.Code.ShouldBe(ExitCode.BadInput);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain(why);
        run.Error.ShouldNotContain(Support.RepositoryFiles.Root);
    }

    [Fact]
    public void A_screen_comes_from_standard_input_and_is_held_when_questions_are_open()
    {
        var run = CliRun.Of(["choose", "--screen", "-", "--exit-level"], "id: n1\nstature: 188 cm\nsex: male\ndate: 2026-11-24\n");

        run.Code.ShouldBe(ExitCode.Held);
        run.Output.ShouldStartWith("n1: HELD - not answered");
        run.Output.ShouldContain("bladder-bowel-or-saddle-change");
    }

    [Fact]
    public void Faulty_rules_exit_with_four()
    {
        var home = Directory.CreateTempSubdirectory("hinge-").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(home, "rules"));
            File.WriteAllText(Path.Combine(home, "rules", "vocabulary.yaml"), "facts: []\n");
            var run = CliRun.Of("choose", "--home", home, "--roster", CliRun.Roster);

            run.Code.ShouldBe(ExitCode.BadRules);
            run.Output.ShouldBeEmpty();
            run.Error.ShouldContain("error HS");
        }
        finally
        {
            Directory.Delete(home, true);
        }
    }

    [Theory]
    [InlineData("table")]
    [InlineData("json")]
    [InlineData("csv")]
    [InlineData("markdown")]
    public void The_same_input_gives_the_same_bytes_and_no_escape_byte(string format)
    {
        string[] line = ["choose", "--roster", CliRun.Roster, "--athlete", "p01", "--on", CliRun.Day, "--format", format];
        var first = CliRun.Of(line);

        CliRun.Of(line).Output.ShouldBe(first.Output);
        first.Output.ShouldNotContain('\u001b');
        first.Error.ShouldBeEmpty();
        CliRun.Of(line, "", terminal: true, name => name == "NO_COLOR" ? "1" : null).Output.ShouldBe(first.Output);
        CliRun.Of(line, "", terminal: true, name => name == "TERM" ? "dumb" : null).Output.ShouldBe(first.Output);
    }

    [Fact]
    public void A_terminal_sets_headings_off_and_shows_the_same_words()
    {
        string[] line = [.. CliRun.Club, "--athlete", "p01"];
        var styled = CliRun.Of(line, "", terminal: true).Output;

        styled.ShouldContain('\u001b');
        System.Text.RegularExpressions.Regex.Replace(styled, "\u001b\\[[0-9;]*m", "").ShouldBe(CliRun.Of(line).Output);
    }

    [Fact]
    public void No_row_is_wider_than_agreed_unless_a_single_word_is()
        => CliRun.Of(CliRun.Club).Output.Split('\n').ShouldAllBe(r => r.Length <= PlainText.Width || !r.Trim().Contains(' '));

    [Fact]
    public void Without_a_day_the_clock_tells_it()
        => CliRun.Of("choose", "--roster", CliRun.Roster, "--athlete", "p01").Output.ShouldContain($"on {CliRun.Day}");

    [Fact]
    public void Why_tells_each_rule_with_its_place_and_a_sum_that_adds_up()
    {
        var run = CliRun.Of([.. CliRun.Club, "--athlete", "p01", "--why", "conventional"]);

        run.Code.ShouldBe(ExitCode.Done);
        run.Output.ShouldContain("Sum of points");
        run.Output.ShouldContain("rules/fit/hips.yaml:");
        var score = System.Text.RegularExpressions.Regex.Match(run.Output, @"of \d+, (-?\d+) points").Groups[1].Value;
        run.Output.ShouldContain($"Total: {score}\n");
    }

    [Fact]
    public void A_standing_choice_of_somebody_else_is_a_warning_only()
    {
        var rows = File.ReadAllLines(Path.Combine(Support.RepositoryFiles.Root, CliRun.Roster)).Take(3);
        var run = CliRun.Of(["choose", "--roster", "-", "--standing", "content/demo/standing.yaml", "--on", CliRun.Day], string.Join('\n', rows));

        run.Code.ShouldBe(ExitCode.Done);
        run.Error.ShouldContain("warning HS5012");
    }

    [Fact]
    public void Progress_is_shown_only_where_a_person_looks()
    {
        var rows = File.ReadAllLines(Path.Combine(Support.RepositoryFiles.Root, CliRun.Roster));
        var many = string.Join('\n', rows.Take(1).Concat(Enumerable.Range(0, 60).Select(i => string.Concat($"x{i}", rows[17].AsSpan(3)))));
        string[] line = ["choose", "--roster", "-", "--on", CliRun.Day];

        CliRun.Of(line, many, terminal: true).Error.ShouldContain("50 of 60 athletes");
        CliRun.Of(line, many).Error.ShouldBeEmpty();
    }
}
