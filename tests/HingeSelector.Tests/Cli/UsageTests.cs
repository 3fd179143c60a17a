using System.CommandLine;
using HingeSelector.Cli;
using HingeSelector.Cli.Frame;

namespace HingeSelector.Tests.Cli;

public class UsageTests
{
    [Theory]
    [InlineData("", "needs a command")]
    [InlineData("rules", "needs a command")]
    [InlineData("chose", "Did you mean 'choose'?")]
    [InlineData("rules chek", "Did you mean 'check'?")]
    [InlineData("choose", "needs a screen or a roster")]
    [InlineData("choose --screen a.yaml --roster b.csv", "exclude each other")]
    [InlineData("choose --screen a.yaml --athlete p01", "a screen holds one athlete")]
    [InlineData("choose --screen", "'--screen' needs a value")]
    [InlineData("choose --screen a --screen b", "given more than once")]
    [InlineData("choose a.yaml", "has no option before it")]
    [InlineData("choose --screen - --room -", "one option only")]
    [InlineData("choose --roster a.csv --format jsn", "Did you mean 'json'?")]
    [InlineData("choose --roster a.csv --on 24.11.2026", "is not a day")]
    [InlineData("choose --roster a.csv --on 2026-02-30", "is not a day")]
    [InlineData("choose --roster a.csv --top 0", "is not a number of candidates")]
    [InlineData("choose --roster a.csv --top many", "is not a number of candidates")]
    [InlineData("choose --roster a.csv --exit-level", "about one athlete")]
    [InlineData("choose --roster a.csv --why sumo", "about one athlete")]
    [InlineData("choose --roster content/demo/club.csv --athlete p01 --why sumoo", "Did you mean 'sumo'?")]
    [InlineData("choose --roster content/demo/club.csv --athlete p01 --why sumo --format json", "'--why' is told as")]
    [InlineData("choose --roster content/demo/club.csv --philosophy balansed", "Did you mean 'balanced'?")]
    [InlineData("choose --roster content/demo/club.csv --on 2026-11-24 --athlete q01", "Did you mean 'p01'?")]
    [InlineData("choose --roster content/demo/club.csv --verbose=yes", "yes")]
    [InlineData("screen template --format yml", "Did you mean 'yaml'?")]
    [InlineData("rules check --home nowhere", "holds no rules")]
    public void What_is_not_understood_is_said_on_standard_error_and_exits_with_two(string line, string expected)
    {
        var run = CliRun.Of(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        run.Code.ShouldBe(ExitCode.Usage);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain(expected);
        run.Error.ShouldNotContain("   at ");
    }

    [Fact]
    public void Every_single_slip_in_every_option_name_gets_the_right_suggestion()
    {
        var missed = new List<string>();
        foreach (var verb in Verbs.All())
        {
            string[] path = verb.Group is { } group ? [group, verb.Command.Name] : [verb.Command.Name];
            var names = Names(path);
            foreach (var name in names)
            {
                foreach (var slip in Slips(name).Except(names))
                {
                    var run = CliRun.Of([.. path, slip]);
                    if (run.Code != ExitCode.Usage || run.Output.Length > 0 || !run.Error.Contains($"'{name}'", StringComparison.Ordinal) || !run.Error.Contains("Did you mean", StringComparison.Ordinal))
                        missed.Add($"{slip} for {name}: {run.Error}");
                }
            }
        }
        missed.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("--screen", "--screen", true)]
    [InlineData("--sreen", "--screen", true)]
    [InlineData("--scrreen", "--screen", true)]
    [InlineData("--scerne", "--screen", false)]
    [InlineData("--csreen", "--screen", true)]
    [InlineData("--screem", "--screen", true)]
    [InlineData("", "a", true)]
    [InlineData("ab", "", false)]
    public void One_slip_is_a_letter_more_or_less_or_wrong_or_two_swapped(string typed, string name, bool expected)
        => Slip.IsOneSlip(typed, name).ShouldBe(expected);

    private static IReadOnlyList<string> Names(string[] path)
    {
        using var around = new Surroundings(Stream.Null, Stream.Null, Stream.Null) { Clock = TimeProvider.System, WorkingFolder = "", ProgramFolder = "" };
        Command command = Entry.Tree(around);
        foreach (var name in path)
            command = command.Subcommands.First(c => c.Name == name);
        return UsageReport.OptionsOf(command);
    }

    private static IEnumerable<string> Slips(string name)
    {
        yield return name[1..];
        for (var i = 2; i < name.Length; i++)
        {
            yield return name.Remove(i, 1);
            yield return name[..i] + "x" + name[(i + 1)..];
            yield return name.Insert(i, "x");
            yield return name.Insert(i, name[i].ToString());
            if (i + 1 < name.Length && name[i] != name[i + 1])
                yield return name[..i] + name[i + 1] + name[i] + name[(i + 2)..];
        }
        yield return name + "x";
    }
}
