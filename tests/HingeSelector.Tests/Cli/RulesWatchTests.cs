using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

public sealed class RulesWatchTests : IDisposable
{
    private const string File = "rules/fit/hips.yaml";

    private readonly HomeCopy _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void A_save_tells_the_new_ranking_and_what_changed()
    {
        var text = _home.Read(File);
        var run = Watch(
            () => _home.Write("rules/exclusions/sample.yaml", Exclude("hex-high")),
            () => { },
            () => _home.Write("rules/exclusions/sample.yaml", Exclude("hex-low") + "# longer\n"));

        run.Code.ShouldBe(ExitCode.Done, run.Error);
        var told = run.Output.Split("Saved: rules/exclusions/sample.yaml\n");
        told.Length.ShouldBe(3);
        told[0].ShouldContain("p01");
        told[0].ShouldNotContain("Changed");
        told[1].ShouldContain("rule sample-exclusion: new");
        told[1].ShouldContain("-> not ranked");
        told[2].ShouldContain("rule sample-exclusion: changed");
        told[2].ShouldContain("not ranked -> place");
        _home.Read(File).ShouldBe(text);
    }

    [Fact]
    public void A_broken_file_keeps_the_last_good_rules_and_says_so()
    {
        var text = _home.Read(File);
        var run = Watch(
            () => _home.Write(File, text.Replace("below 0 deg", "under 0 deg", StringComparison.Ordinal)),
            () => _home.Write(File, text + "\n"));

        run.Code.ShouldBe(ExitCode.Done);
        var told = run.Output.Split("Saved: ");
        told.Length.ShouldBe(3);
        told[1].ShouldContain("the last good rules and their answer stand.");
        told[1].ShouldContain("rules/fit/hips.yaml:");
        told[1].ShouldContain("error HS");
        // Mended, it is measured against the last good answer.
        told[2].ShouldContain("no rule says anything else, and no variant moved");
    }

    [Fact]
    public void The_file_of_the_athlete_is_watched_too()
    {
        var roster = _home.Read("content/demo/club.csv");
        var run = Watch(
            () => _home.Write("content/demo/club.csv", roster.Replace("p01", "p91", StringComparison.Ordinal)),
            () => _home.Write("content/demo/club.csv", roster + "\n"));

        run.Code.ShouldBe(ExitCode.Done);
        run.Output.ShouldContain("No athlete 'p01' is on this roster. The last good answer stands.");
        run.Output.ShouldContain("no variant moved");
    }

    [Fact]
    public void Rules_that_are_broken_from_the_start_are_refused()
    {
        _home.Write(File, "rules: [\n");
        var run = Watch();

        run.Code.ShouldBe(ExitCode.BadRules);
        run.Output.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("watch", "'rules watch' needs one athlete.")]
    [InlineData("watch --roster content/demo/club.csv", "'rules watch' needs one athlete.")]
    [InlineData("watch --screen -", "standard input can be read once.")]
    [InlineData("watch --roster content/demo/club.csv --athlete p0x --on 2026-11-24", "No athlete 'p0x' is on this roster.")]
    public void A_command_line_that_cannot_be_is_told(string args, string message)
    {
        var run = CliRun.Of(["rules", .. args.Split(' ')], "", folder: _home.Folder);

        run.Code.ShouldBe(ExitCode.Usage);
        run.Error.ShouldContain(message);
    }

    private static string Exclude(string variant) => $"""
        rules:
          - rule: sample-exclusion
            when:
              variant: is {variant}
            then:
              - exclude: Invented for a test.
            because: Invented for a test.
            grade: practice
            disputed: no
            sources: []

        """;

    // Each pause lets one person save once; after the last one somebody presses Ctrl+C.
    private CliRun Watch(params Action[] saves)
    {
        var next = new Queue<Action>(saves);
        return CliRun.Of(["rules", "watch", "--roster", CliRun.Roster, "--athlete", "p01", "--on", CliRun.Day], "", folder: _home.Folder, pause: _ =>
        {
            if (!next.TryDequeue(out var save))
                return false;
            save();
            return true;
        });
    }
}
