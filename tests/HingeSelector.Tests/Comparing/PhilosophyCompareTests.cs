using System.Text.Json;
using System.Text.Json.Nodes;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Cli;
using HingeSelector.Tests.Support;
using Json.Schema;

namespace HingeSelector.Tests.Comparing;

/// <summary>Who of a roster changes between two philosophies.</summary>
public sealed class PhilosophyCompareTests
{
    private static readonly string[] _club = ["--roster", CliRun.Roster, "--room", "content/demo/room.yaml", "--standing", "content/demo/standing.yaml", "--on", CliRun.Day];

    [Fact]
    public void The_demo_club_between_two_philosophies_is_as_agreed()
    {
        var run = CliRun.Of(["philosophy", "compare", "balanced", "carry-over-first", .. _club]);
        run.Code.ShouldBe(ExitCode.Done, run.Error);
        Golden.ShouldMatch(run.Output, "impact/philosophies.txt");
    }

    [Fact]
    public void Everyone_who_differs_by_choose_is_in_it_and_nobody_else()
    {
        var (before, after) = (Answers("balanced"), Answers("strength-first"));
        var compared = JsonNode.Parse(CliRun.Of(["philosophy", "compare", "balanced", "strength-first", "--format", "json", .. _club]).Output)!;
        var groups = compared["groups"]!.AsArray();
        string[] With(string kind) => [.. groups.Where(g => g!["changes"]!.AsArray().Any(c => (string?)c == kind)).SelectMany(g => g!["athletes"]!.AsArray().Select(a => (string)a!)).Order(StringComparer.Ordinal)];
        string[] Differ(Func<JsonNode, string> of) => [.. before.Keys.Where(id => of(before[id]) != of(after[id])).Order(StringComparer.Ordinal)];

        With("first choice").ShouldBe(Differ(a => string.Join('|', a["candidates"]!.AsArray().Take(1).Select(c => $"{c!["variant"]}")) + string.Join('|', a["candidates"]!.AsArray().Where(c => (bool)c!["tiedWithFirst"]!).Select(c => (string)c!["variant"]!).Order(StringComparer.Ordinal))));
        With("order").ShouldBe(Differ(a => string.Join('|', a["candidates"]!.AsArray().Select(c => (string?)c!["variant"]))));
        With("first choice").ShouldNotBeEmpty();
        With("stop gone").ShouldBeEmpty();
        With("outcome").ShouldBeEmpty();
    }

    [Fact]
    public void The_document_follows_its_schema()
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(RepositoryFiles.Root, "rules/schema/philosophy-comparison.schema.json")));
        using var document = JsonDocument.Parse(CliRun.Of(["philosophy", "compare", "carry-over-first", "strength-first", "--format", "json", .. _club]).Output);
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        result.IsValid.ShouldBeTrue(string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).Take(5)));
    }

    [Theory]
    [InlineData("There is no philosophy 'strenght-first'.", "balanced", "strenght-first")]
    [InlineData("'balanced' is named twice.", "balanced", "balanced")]
    public void A_slip_is_told(string message, string from, string to)
    {
        var run = CliRun.Of(["philosophy", "compare", from, to, .. _club]);
        run.Code.ShouldBe(ExitCode.Usage);
        run.Error.ShouldStartWith($"hinge-selector: {message}\n");
    }

    [Fact]
    public void A_missing_name_or_roster_is_told()
    {
        var missing = CliRun.Of(["philosophy", "compare", "balanced", .. _club]);
        missing.Code.ShouldBe(ExitCode.Usage);
        missing.Error.ShouldEndWith("philosophy compare' needs A and B; B is missing.\n  The philosophy to compare it with.\n");
        CliRun.Of("philosophy", "compare", "balanced", "strength-first").Error.ShouldStartWith("hinge-selector: 'philosophy compare' needs a roster.\n");
    }

    private static Dictionary<string, JsonNode> Answers(string philosophy)
        => JsonNode.Parse(CliRun.Of(["choose", .. _club, "--philosophy", philosophy, "--format", "json"]).Output)!["athletes"]!.AsArray().ToDictionary(a => (string)a!["id"]!, a => a!);
}
