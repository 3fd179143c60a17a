using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

public sealed partial class TriesVerbTests : IDisposable
{
    private const string Hips = "rules/fit/hips.yaml";

    private readonly string _home = Directory.CreateTempSubdirectory("hinge-").FullName;

    [Fact]
    public void All_examples_of_the_shipped_rules_come_out()
    {
        var run = CliRun.Of("rules", "try");
        run.Code.ShouldBe(ExitCode.Done, run.Output);
        run.Output.ShouldEndWith("all come out as expected.\n");
    }

    [Fact]
    public void A_failing_example_says_what_was_expected_and_what_came()
    {
        Copy(t => t.Replace("between 0 and 5 deg", "between 0 and 2 deg", StringComparison.Ordinal));
        var run = CliRun.Of("rules", "try", "hips-just-fit", "--home", _home);

        run.Code.ShouldBe(ExitCode.Findings);
        run.Output.ShouldContain("expected  fires\n  actual    does not fire\n    fails    hip-spare, as set up: between 0 and 2 deg   [hip-spare, as set up 3 deg, 1 deg above 2 deg]");
        var json = JsonNode.Parse(CliRun.Of("rules", "try", "hips-just-fit", "--home", _home, "--format", "json").Output)!;
        ((int)json["otherwise"]!).ShouldBeGreaterThan(0);
        ((string)json["tries"]![0]!["conditions"]![0]!["values"]![0]!["distance"]!).ShouldBe("1 deg above 2 deg");
    }

    [Fact]
    public void What_is_proposed_can_be_written_and_then_nothing_is_missing()
    {
        Copy(t => Changes().Replace(t, ""));
        CliRun.Of("rules", "try", "hips-just-fit", "--propose", "--home", _home).Code.ShouldBe(ExitCode.Findings);
        CliRun.Of("rules", "mutate", "hips-just-fit", "--home", _home).Output.ShouldContain("no example notices");
        CliRun.Of("rules", "coverage", "hips-just-fit", "--home", _home).Code.ShouldBe(ExitCode.Findings);

        CliRun.Of("rules", "try", "hips-just-fit", "--propose", "--write", "--home", _home).Output.ShouldEndWith("examples written.\n");
        CliRun.Of("rules", "try", "hips-just-fit", "--propose", "--home", _home).Output.ShouldBe("0 examples are missing.\n");
        CliRun.Of("rules", "mutate", "hips-just-fit", "--home", _home).Code.ShouldBe(ExitCode.Done);
        CliRun.Of("rules", "coverage", "hips-just-fit", "--home", _home).Output.ShouldContain("100 %");
    }

    [Fact]
    public void A_squad_is_recorded_and_replayed()
    {
        Copy(t => t);
        var record = Path.Combine(_home, "squad.json");
        string[] input = ["--roster", "content/demo/club.csv", "--on", CliRun.Day];
        CliRun.Of(["rules", "record", .. input, "--to", record]).Code.ShouldBe(ExitCode.Done);
        CliRun.Of(["rules", "record", .. input, "--to", "-"]).Output.ShouldBe(File.ReadAllText(record));
        CliRun.Of("rules", "replay", record).Code.ShouldBe(ExitCode.Done);
        CliRun.Of("rules", "replay", record).Output.ShouldEndWith("decided as recorded.\n");

        Copy(t => t.Replace("between 5 and 15 deg\n    then:\n      - points: +1", "between 5 and 15 deg\n    then:\n      - points: +3", StringComparison.Ordinal));
        var changed = CliRun.Of("rules", "replay", record, "--home", _home);
        changed.Code.ShouldBe(ExitCode.Findings);
        changed.Output.ShouldContain(" for fit -> ");
        JsonNode.Parse(CliRun.Of("rules", "replay", record, "--home", _home, "--format", "json").Output)!["changes"]!.AsArray().ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("rules", "try", "no-such-rule")]
    [InlineData("rules", "try", "--topic", "no-such-topic")]
    [InlineData("rules", "try", "hips-fit", "--write")]
    [InlineData("rules", "mutate", "--format", "xml")]
    [InlineData("rules", "record", "--roster", "content/demo/club.csv", "--to", "-")]
    [InlineData("rules", "record", "--on", "2026-11-24", "--to", "-")]
    [InlineData("rules", "replay")]
    public void A_slip_on_the_command_line_exits_with_two(params string[] line)
    {
        var run = CliRun.Of(line);
        run.Code.ShouldBe(ExitCode.Usage);
        run.Output.ShouldBeEmpty();
    }

    [Fact]
    public void What_is_no_record_is_said_so()
    {
        var run = CliRun.Of("rules", "replay", "content/demo/club.csv");
        run.Code.ShouldBe(ExitCode.BadInput);
        run.Error.ShouldContain("it is not a recorded squad");
    }

    [GeneratedRegex(@"^        (also|not|open) \w+: .*\n(          .*\n)*", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Changes();

    public void Dispose() => Directory.Delete(_home, true);

    private void Copy(Func<string, string> change)
    {
        foreach (var (path, text) in RepositoryFiles.Rules.Texts)
        {
            var file = Path.Combine(_home, "rules", path);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, "rules/" + path == Hips ? change(text) : text);
        }
    }
}
