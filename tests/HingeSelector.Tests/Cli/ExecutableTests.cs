using System.Diagnostics;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

/// <summary>The built program, as a shell calls it.</summary>
public class ExecutableTests
{
    [Fact]
    public void It_answers_like_the_program_in_the_test_process()
    {
        string[] line = [.. CliRun.Club, "--athlete", "p07", "--format", "json"];
        var (code, output, error) = Run(line);

        code.ShouldBe(ExitCode.Done);
        error.ShouldBeEmpty();
        output.ShouldBe(CliRun.Of(line).Output);
    }

    [Fact]
    public void A_slip_exits_with_two_and_says_nothing_on_standard_output()
    {
        var (code, output, error) = Run(["choose", "--scren", "a.yaml"]);

        code.ShouldBe(ExitCode.Usage);
        output.ShouldBeEmpty();
        error.ShouldContain("Did you mean '--screen'?");
    }

    [Fact]
    public void An_emergency_is_told_in_the_exit_code()
        => Run([.. CliRun.Club, "--athlete", "p16", "--exit-level"]).Code.ShouldBe(ExitCode.Emergency);

    private static (int Code, string Output, string Error) Run(string[] args)
    {
        var tests = new DirectoryInfo(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        var program = Path.Combine(tests.Parent!.Parent!.FullName, "HingeSelector.Cli", tests.Name, "hinge-selector.dll");
        using var process = Process.Start(new ProcessStartInfo("dotnet", [program, .. args])
        {
            WorkingDirectory = RepositoryFiles.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        })!;
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
