using System.Text.Json;
using System.Text.Json.Nodes;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Cli;
using HingeSelector.Tests.Support;
using Json.Schema;

namespace HingeSelector.Tests.Analysis;

/// <summary>The report as JSON, and what warnings do to the exit code.</summary>
public sealed class CheckReportTests
{
    private static readonly JsonSchema _schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(RepositoryFiles.Root, "rules", "schema", "check.schema.json")));

    [Fact]
    public void A_clean_report_follows_the_schema()
    {
        var run = CliRun.Of("rules", "check", "--format", "json", "--strict");
        run.Code.ShouldBe(ExitCode.Done);
        using var document = JsonDocument.Parse(run.Output);
        _schema.Evaluate(document.RootElement).IsValid.ShouldBeTrue();
    }

    [Fact]
    public void A_warning_carries_place_page_screen_and_edit()
    {
        using var home = new TemporaryHome();
        home.Write(Defect.File, "rules:\n" + Defect.Rule("a-rule | age: below 18 years; sex: is male | caution: Look here.") + Defect.Rule("b-rule | age: below 20 years | caution: Look here."));
        var run = CliRun.Of("rules", "check", "--format", "json", "--home", home.Path);
        run.Code.ShouldBe(ExitCode.Findings);
        using var document = JsonDocument.Parse(run.Output);
        _schema.Evaluate(document.RootElement).IsValid.ShouldBeTrue();
        var item = JsonNode.Parse(run.Output)!["diagnostics"]!.AsArray().ShouldHaveSingleItem()!;
        ((string?)item["code"]).ShouldBe("HS3103");
        ((string?)item["page"]).ShouldBe("content/diagnostics/HS3103.md");
        ((string?)item["text"]).ShouldBe("  - rule: a-rule");
        ((int?)item["column"]).ShouldBe(11);
        ((string?)item["witness"]).ShouldNotBeNull().ShouldContain("sex: male");
        ((bool?)item["edit"]!["safe"]).ShouldBe(true);
    }

    [Fact]
    public void Strict_takes_a_warning_for_an_error()
    {
        using var home = new TemporaryHome();
        home.Write(Defect.File, "rules:\n" + Defect.Rule("a-rule | age: at least 8 years | caution: Look here."));
        var run = CliRun.Of("rules", "check", "--strict", "--home", home.Path);
        run.Code.ShouldBe(ExitCode.BadRules);
        run.Output.ShouldContain("See content/diagnostics/HS3102.md");
        run.Output.ShouldEndWith("0 errors, 1 warnings.\n");
    }

    [Fact]
    public void An_unknown_format_is_a_usage_error()
        => CliRun.Of("rules", "check", "--format", "jsn").Code.ShouldBe(ExitCode.Usage);
}
