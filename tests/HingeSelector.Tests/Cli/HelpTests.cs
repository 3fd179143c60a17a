using HingeSelector.Cli;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

/// <summary>After a wanted change run the tests once with HINGE_UPDATE_GOLDEN=1; it rewrites tests/golden/cli.</summary>
public class HelpTests
{
    private const int MostRows = 60;

    // Their examples run in a copy of the rules.
    private static readonly string[] _write = ["rules new", "rules rename", "rules format"];

    public static TheoryData<string> Pages => ["", .. Verbs.Groups.Keys, .. Verbs.All().Select(v => $"{v.Group} {v.Command.Name}".Trim())];

    public static TheoryData<string> Examples => [.. Verbs.All().SelectMany(v => v.Examples)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_help_is_as_agreed(string path)
    {
        var run = CliRun.Of([.. path.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);
        var file = Path.Combine(RepositoryFiles.Root, "tests", "golden", "cli", $"help{(path.Length > 0 ? "-" + path.Replace(' ', '-') : "")}.txt");
        if (Environment.GetEnvironmentVariable("HINGE_UPDATE_GOLDEN") == "1")
            File.WriteAllText(file, run.Output);

        run.Code.ShouldBe(ExitCode.Done);
        run.Error.ShouldBeEmpty();
        run.Output.ShouldBe(File.ReadAllText(file));
        run.Output.Split('\n').Length.ShouldBeLessThan(MostRows);
    }

    [Fact]
    public void Every_verb_shows_two_to_four_examples()
        => Verbs.All().ShouldAllBe(v => v.Examples.Count >= 2 && v.Examples.Count <= 4);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_help_runs(string example)
    {
        string[] args = [.. example.Split(' ').Skip(1)];
        using var copy = _write.Any(verb => example.StartsWith($"hinge-selector {verb}", StringComparison.Ordinal)) ? new HomeCopy() : null;
        var run = CliRun.Of(args, "", folder: copy?.Folder);

        run.Code.ShouldBeOneOf(ExitCode.Done, ExitCode.Findings);
        run.Output.ShouldNotBeEmpty();
    }

    [Fact]
    public void Help_is_given_even_where_the_rest_of_the_line_is_wrong()
        => CliRun.Of("choose", "--screen", "a", "--help").Code.ShouldBe(ExitCode.Done);

    [Fact]
    public void The_version_is_the_one_of_the_stamp()
        => CliRun.Of("--version").Output.ShouldBe($"hinge-selector {Recommending.Stamps.Tool}\n");
}
