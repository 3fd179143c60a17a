using System.Text.Json;
using HingeSelector.Cli.Frame;
using HingeSelector.Rendering;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

/// <summary>Over a copy of the rules with one invented topic, so that the golden files do not change with every rule.</summary>
public sealed class RulesListAndShowTests : IDisposable
{
    private readonly HomeCopy _home = new();

    public RulesListAndShowTests() => _home.Write("rules/sample/sample.yaml", RepositoryFiles.Source("tests/golden/editing/sample.yaml").Text);

    public void Dispose() => _home.Dispose();

    [Theory]
    [InlineData("list-topic", "list --topic sample")]
    [InlineData("list-word", "list --topic sample --about straight-leg-raise")]
    [InlineData("list-finding", "list --about sample-short")]
    [InlineData("list-variant", "list --topic sample/ --variant sumo")]
    [InlineData("list-grade", "list --topic sample --grade practice")]
    [InlineData("show-giver", "show sample-find-short")]
    [InlineData("show-reader", "show sample-rests-on-it")]
    public void The_answer_is_as_agreed(string golden, string args)
    {
        var run = Run(args.Split(' '));

        run.Code.ShouldBe(ExitCode.Done, run.Error);
        Golden.ShouldMatch(WithoutTotal(run.Output), $"editing/{golden}.txt");
    }

    [Fact]
    public void The_json_says_what_the_text_says()
    {
        using var json = JsonDocument.Parse(Run("show", "sample-rests-on-it", "--format", "json").Output);
        var rule = json.RootElement;

        rule.GetProperty("file").GetString().ShouldBe("rules/sample/sample.yaml");
        rule.GetProperty("line").GetInt32().ShouldBe(19);
        rule.GetProperty("variants").EnumerateArray().Select(v => v.GetString()).ShouldBe(["conventional", "sumo"]);
        rule.GetProperty("sources")[0].GetProperty("id").GetString().ShouldBe("project-proposal");
        var read = rule.GetProperty("reads")[0];
        read.GetProperty("finding").GetString().ShouldBe("sample-short");
        read.GetProperty("givenBy")[0].GetProperty("id").GetString().ShouldBe("sample-find-short");
        rule.GetProperty("tries")[0].GetProperty("given").GetProperty("hip-spare, as set up").GetString().ShouldBe("6 deg");
    }

    [Theory]
    [InlineData("show find-short-hamstring", "There is no rule 'find-short-hamstring'.", "Did you mean 'find-short-hamstrings'?")]
    [InlineData("show sample-short", "'sample-short' is a finding or a word, not a rule.", "rules list --about sample-short")]
    [InlineData("show", "'rules show' needs ID; ID is missing.", "Id of a rule")]
    [InlineData("show sample-find-short --format xml", "'xml' is not a format of 'rules show'.", "table")]
    [InlineData("list --about straight-leg-rase", "There is no word or finding 'straight-leg-rase'.", "Did you mean 'straight-leg-raise'?")]
    [InlineData("list --topic fitt", "There is no topic 'fitt'.", "'fit'")]
    [InlineData("list --variant sumos", "There is no variant 'sumos'.", "'sumo'")]
    [InlineData("list --grade practise", "There is no grade 'practise'.", "'practice'")]
    public void A_wrong_name_is_told_with_the_nearest(string args, string message, string hint)
    {
        var run = Run(args.Split(' '));

        run.Code.ShouldBe(ExitCode.Usage);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain(message);
        run.Error.ShouldContain(hint);
    }

    [Fact]
    public void Every_shipped_rule_can_be_read_aloud()
    {
        foreach (var rule in RepositoryFiles.Book.Rules)
        {
            var text = string.Join('\n', RuleText.Of(RepositoryFiles.Book, rule).Select(l => l.Body));
            text.ShouldContain(rule.Because);
            text.ShouldContain(rule.Span.FileAndLine);
        }
    }

    // The whole number of rules changes with every shipped one.
    private static string WithoutTotal(string text) => System.Text.RegularExpressions.Regex.Replace(text, "of [0-9]+ rules", "of N rules");

    private CliRun Run(params string[] args) => CliRun.Of([.. "rules".Split(' '), .. args, "--home", _home.Folder]);
}
