using HingeSelector.Cli.Frame;

namespace HingeSelector.Tests.Cli;

public class ScreenTemplateTests
{
    [Fact]
    public void An_empty_template_is_a_screen_that_is_held()
    {
        var template = CliRun.Of("screen", "template").Output;
        var run = CliRun.Of(["choose", "--screen", "-", "--exit-level"], template);

        run.Error.ShouldBeEmpty();
        run.Code.ShouldBe(ExitCode.Held);
    }

    [Fact]
    public void The_header_of_a_roster_is_a_roster_of_nobody()
    {
        var header = CliRun.Of("screen", "template", "--format", "csv").Output;
        var run = CliRun.Of(["choose", "--roster", "-"], header);

        run.Code.ShouldBe(ExitCode.Done);
        run.Output.ShouldStartWith("0 athletes");
    }
}
