using System.Text.RegularExpressions;
using HingeSelector.Tests.Cli;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.House;

/// <summary>The README shows what the program really prints. With HINGE_UPDATE_GOLDEN=1 its output block is rewritten.</summary>
public sealed partial class ReadmeTests
{
    private static readonly string _path = Path.Combine(RepositoryFiles.Root, "README.md");

    [Fact]
    public void The_first_command_shows_the_demo_club_and_ends_well()
    {
        var line = Commands()[0];
        line.ShouldStartWith("dotnet run --project src/HingeSelector.Cli -- ");
        var run = CliRun.Of(line.Split(" -- ", 2)[1].Split(' '));
        run.Code.ShouldBe(0, run.Error);
        run.Error.ShouldBeEmpty();
        run.Output.ShouldContain("p24");
    }

    [Fact]
    public void The_second_command_runs_all_tests()
        => Commands()[1].ShouldBe("dotnet test --solution HingeSelector.sln");

    [Fact]
    public void The_output_block_is_what_the_program_prints()
    {
        var run = CliRun.Of([.. Commands()[0].Split(" -- ", 2)[1].Split(' '), "--athlete", "p14", "--top", "1"]);
        var readme = File.ReadAllText(_path);
        if (Golden.Updates)
        {
            readme = OutputBlock().Replace(readme, _ => $"```text\n{run.Output}```", 1);
            File.WriteAllText(_path, readme);
        }
        OutputBlock().Match(readme).Groups["text"].Value.ShouldBe(run.Output);
    }

    private static List<string> Commands() => [.. ShellBlock().Matches(File.ReadAllText(_path)).Select(m => m.Groups["line"].Value)];

    [GeneratedRegex("^```sh\n(?<line>.*)\n```$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex ShellBlock();

    [GeneratedRegex("```text\n(?<text>.*?)```", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex OutputBlock();
}
