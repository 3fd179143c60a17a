using HingeSelector.Cli.Frame;
using HingeSelector.Rendering;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

/// <summary>The explaining verbs end to end. After a wanted change run once with HINGE_UPDATE_GOLDEN=1; it rewrites tests/golden/explaining.</summary>
public class ExplainTests
{
    private static readonly string[] _club = ["--roster", CliRun.Roster, "--room", "content/demo/room.yaml", "--on", CliRun.Day];

    public static TheoryData<string, string> Screens => new()
    {
        { "why hex-high", "p14" },
        { "why-not", "p14" },
        { "why-not sumo romanian", "p05" },
        { "why-not", "p06" },
        { "what-if hinge-control=loses", "p14" },
        { "what-if hip-flexion.both=100deg gives-first=nothing", "p05" },
        { "what-if low-back-pain-worst=6points", "p14" },
        { "what-if chest-pain-fainting-or-breathless=yes", "p14" },
        { "turning-points", "p14" },
        { "turning-points", "p04" },
        { "turning-points", "p02" },
        { "next-measurement", "p03" },
        { "next-measurement", "p14" },
        { "how-sure", "p14" },
        { "how-sure", "p03" },
        { "why-not block-start sumo --standing content/demo/standing.yaml", "p01" },
    };

    [Theory]
    [MemberData(nameof(Screens))]
    public void The_screen_is_as_agreed(string verb, string athlete)
    {
        var run = CliRun.Of([.. verb.Split(' '), .. _club, "--athlete", athlete]);

        run.Code.ShouldBe(ExitCode.Done, run.Error);
        run.Error.ShouldBeEmpty();
        run.Output.Split('\n').ShouldAllBe(r => r.Length <= PlainText.Width);
        Golden.ShouldMatch(run.Output, $"explaining/{string.Concat($"{verb}-{athlete}".Select(c => char.IsLetterOrDigit(c) ? c : '-'))}.txt");
    }

    [Fact]
    public void Why_prints_what_choose_prints()
        => CliRun.Of(["why", "conventional", .. CliRun.Club.Skip(1), "--athlete", "p01"]).Output.ShouldBe(CliRun.Of([.. CliRun.Club, "--athlete", "p01", "--why", "conventional"]).Output);

    [Theory]
    [InlineData("why-not")]
    [InlineData("next-measurement")]
    public void With_an_emergency_nothing_but_the_stop_is_told(string verb)
    {
        var run = CliRun.Of([.. verb.Split(' '), .. _club, "--athlete", "p16"]);

        run.Output.ShouldContain("Call local emergency care now");
        foreach (var other in new[] { "points", "deadlift", "draws", "Stamp", "Not moved" })
            run.Output.ShouldNotContain(other);
    }

    [Theory]
    [InlineData("why-not", "p02")]
    [InlineData("turning-points", "p17")]
    [InlineData("next-measurement", "p22")]
    [InlineData("how-sure", "p24")]
    public void Who_may_not_pull_gets_what_holds_on_top_and_no_way_around_it(string verb, string athlete)
    {
        var run = CliRun.Of([verb, .. _club, "--athlete", athlete]);

        run.Output.Split('\n')[1].TrimStart().Split(' ')[0].ShouldBeOneOf("Stop", "Ask");
        run.Output.ShouldContain("Nothing is ranked while this holds");
        run.Output.ShouldNotContain("First choice:");
    }

    [Theory]
    [InlineData("why", "needs a variant")]
    [InlineData("why sumoo --roster content/demo/club.csv --athlete p01", "Did you mean 'sumo'?")]
    [InlineData("why sumo conventional --roster content/demo/club.csv --athlete p01", "takes one variant")]
    [InlineData("why-not sumoo --roster content/demo/club.csv --athlete p01", "Did you mean 'sumo'?")]
    [InlineData("why-not --roster content/demo/club.csv", "speaks about one athlete")]
    [InlineData("turning-points", "needs one athlete")]
    [InlineData("how-sure --roster content/demo/club.csv --athlete p01 --format csv", "is not a format of 'how-sure'")]
    [InlineData("what-if --roster content/demo/club.csv --athlete p01", "needs a change")]
    [InlineData("what-if hinge-contrl=loses --roster content/demo/club.csv --on 2026-11-24 --athlete p14", "Did you mean 'hinge-control'?")]
    [InlineData("what-if fever-or-illness=no --roster content/demo/club.csv --on 2026-11-24 --athlete p10", "ask the athlete again")]
    public void What_cannot_be_asked_is_said_on_standard_error_and_exits_with_two(string line, string expected)
    {
        var text = line.StartsWith("why", StringComparison.Ordinal) && !line.Contains("--roster", StringComparison.Ordinal) ? line + " --roster content/demo/club.csv --athlete p01" : line;
        var run = CliRun.Of(text.Split(' '));

        run.Code.ShouldBe(ExitCode.Usage);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain(expected);
        run.Error.ShouldNotContain("   at ");
    }

    [Fact]
    public void Faulty_changes_are_shown_with_their_place_all_at_once()
    {
        var run = CliRun.Of(["what-if", "hinge-contrl=loses", "hip-flexion=100deg", "hip-flexion lft=100deg", "stature=3 m", "x", .. _club, "--athlete", "p14"]);

        run.Code.ShouldBe(ExitCode.Usage);
        Golden.ShouldMatch(run.Error, "explaining/what-if-faults.txt");
    }

    [Theory]
    [InlineData("how-sure")]
    public void The_same_question_gives_the_same_bytes(string verb)
    {
        string[] line = [verb, .. _club, "--athlete", "p14", "--format", "json"];
        CliRun.Of(line).Output.ShouldBe(CliRun.Of(line).Output);
    }
}
