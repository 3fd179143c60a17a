using System.Text.Json;
using System.Text.Json.Nodes;
using HingeSelector.Tests.Support;
using Json.Schema;

namespace HingeSelector.Tests.Cli;

public class JsonSchemaTests
{
    private static readonly string _file = Path.Combine(RepositoryFiles.Root, "rules", "schema", "recommendation.schema.json");
    private static readonly JsonSchema _schema = JsonSchema.FromText(File.ReadAllText(_file));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_answers_of_the_demo_club_follow_the_schema(bool withRoom)
    {
        var run = CliRun.Of(withRoom ? [.. CliRun.Club, "--format", "json"] : ["choose", "--roster", CliRun.Roster, "--on", CliRun.Day, "--format", "json", "--top", "4"]);
        using var document = JsonDocument.Parse(run.Output);
        var result = _schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });

        var faults = (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).Take(5);
        result.IsValid.ShouldBeTrue(string.Join('\n', faults));
    }

    [Fact]
    public void The_schema_refuses_what_is_not_an_answer()
    {
        var document = JsonNode.Parse(CliRun.Of([.. CliRun.Club, "--athlete", "p16", "--format", "json"]).Output)!;
        document["athletes"]![0]!["outcome"] = "fine";
        using var wrong = JsonDocument.Parse(document.ToJsonString());

        _schema.Evaluate(wrong.RootElement).IsValid.ShouldBeFalse();
    }

    [Theory]
    [InlineData("recommendation")]
    [InlineData("impact")]
    [InlineData("philosophy-comparison")]
    public void Every_property_is_described(string schema)
    {
        var bare = new List<string>();
        Visit(JsonNode.Parse(File.ReadAllText(Path.Combine(Path.GetDirectoryName(_file)!, schema + ".schema.json")))!, "", bare);
        bare.ShouldBeEmpty();
    }

    [Fact]
    public void Outcomes_are_told_apart_and_an_emergency_carries_no_ranking()
    {
        var athletes = JsonNode.Parse(CliRun.Of([.. CliRun.Club, "--format", "json"]).Output)!["athletes"]!.AsArray();

        athletes.Select(a => (string?)a!["outcome"]).Distinct().Order(StringComparer.Ordinal).ShouldBe(["emergency", "held", "limited-today", "ranked", "refer"]);
        foreach (var athlete in athletes.Where(a => (string?)a!["outcome"] is "emergency" or "held" or "refer"))
            athlete!["candidates"]!.AsArray().ShouldBeEmpty();
    }

    [Fact]
    public void Scores_add_up_from_their_points()
    {
        var candidates = JsonNode.Parse(CliRun.Of([.. CliRun.Club, "--format", "json"]).Output)!["athletes"]!.AsArray().SelectMany(a => a!["candidates"]!.AsArray()).ToList();

        candidates.ShouldNotBeEmpty();
        candidates.ShouldAllBe(c => (int)c!["score"]! == c["points"]!.AsArray().Sum(p => (int)p!["weighted"]!));
    }

    private static void Visit(JsonNode node, string path, List<string> bare)
    {
        if (node is JsonArray array)
        {
            foreach (var item in array)
                Visit(item!, path, bare);
            return;
        }
        if (node is not JsonObject map)
            return;
        if (map["properties"] is JsonObject properties)
        {
            foreach (var (name, schema) in properties)
            {
                if (string.IsNullOrWhiteSpace((string?)schema!["description"]))
                    bare.Add($"{path}/{name}");
            }
        }
        foreach (var (name, child) in map)
        {
            if (child is not null && name is not ("enum" or "required" or "const"))
                Visit(child, $"{path}/{name}", bare);
        }
    }
}
