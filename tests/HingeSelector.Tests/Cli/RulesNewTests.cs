using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

public sealed class RulesNewTests : IDisposable
{
    private const string File = "rules/cautions/a-new-rule.yaml";

    private readonly HomeCopy _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void A_rule_is_begun_and_the_check_says_what_is_to_be_filled()
    {
        var run = Run("new", "a-new-rule", "--topic", "cautions");

        run.Code.ShouldBe(ExitCode.Done, run.Error);
        Golden.ShouldMatch(_home.Read(File), "editing/new.yaml");
        Golden.ShouldMatch(run.Output, "editing/new.txt");
        var check = Run("check");
        check.Code.ShouldBe(ExitCode.BadRules);
        // Nothing but the places to fill, each once.
        check.Output.Split('\n').Count(l => l.Contains(": error ", StringComparison.Ordinal)).ShouldBe(6);
        check.Output.Split("HS3501: This is still to be filled").Length.ShouldBe(7);
    }

    [Fact]
    public void Filled_in_it_is_a_rule_like_any_other()
    {
        Run("new", "a-new-rule", "--topic", "cautions");
        string[] filled = ["age", "at least 80 years", "Take your time.", "Invented for a test.", "{age: 81 years}", "{age: 79 years}"];
        var text = _home.Read(File);
        foreach (var value in filled)
            text = new System.Text.RegularExpressions.Regex("'FILL IN [^']*'|FILL IN [^\n]*").Replace(text, value, 1);
        _home.Write(File, text);

        var check = Run("check");
        check.Output.ShouldContain(" 0 errors");
        Run("show", "a-new-rule").Output.ShouldContain("Take your time.");
        Run("format", "--check").Output.ShouldNotContain("a-new-rule");
    }

    [Theory]
    [InlineData("new find-short-hamstrings --topic cautions", "There is a rule 'find-short-hamstrings' already: rules/findings/body.yaml:")]
    [InlineData("new A_Rule --topic cautions", "'A_Rule' is not an id.")]
    [InlineData("new a-new-rule --topic caution", "Did you mean 'cautions'?")]
    [InlineData("new a-new-rule --topic variants", "'variants' is not a folder for rules.")]
    [InlineData("new a-new-rule --topic ../content", "'../content' is not a folder for rules.")]
    [InlineData("new a-new-rule", "'rules new' needs a topic.")]
    [InlineData("new pain-and-soreness --topic cautions", "'rules/cautions/pain-and-soreness.yaml' exists already; it is not overwritten.")]
    public void What_cannot_be_begun_leaves_nothing_behind(string args, string message)
    {
        var before = _home.Texts();
        var run = Run(args.Split(' '));

        run.Code.ShouldBe(ExitCode.Usage);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain(message);
        _home.Texts().ShouldBe(before);
    }

    private CliRun Run(params string[] args) => CliRun.Of(["rules", .. args, "--home", _home.Folder]);
}
