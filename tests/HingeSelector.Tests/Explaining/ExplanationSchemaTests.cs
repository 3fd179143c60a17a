using System.Text.Json;
using System.Text.Json.Nodes;
using HingeSelector.Diagnostics;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Tests.Support;
using Json.Schema;

namespace HingeSelector.Tests.Explaining;

public sealed class ExplanationSchemaTests
{
    private static readonly string _file = Path.Combine(RepositoryFiles.Root, "rules", "schema", "explanation.schema.json");
    private static readonly JsonSchema _schema = JsonSchema.FromText(File.ReadAllText(_file));
    private static readonly LoopEvaluator _loop = new(Asked.Book);

    [Fact]
    public void Every_explanation_of_the_demo_club_follows_the_schema()
    {
        foreach (var question in Asked.Club())
        {
            foreach (var (name, part) in Parts(question))
                Valid(Document(question, part), $"{question.Athlete.Id}, {name}");
        }
    }

    [Fact]
    public void The_schema_refuses_what_is_no_explanation()
    {
        var question = Asked.Club().First(q => q.Athlete.Id == "p14");
        var document = JsonNode.Parse(Document(question, json => json.Write(HowSureCount.Count(Asked.Book, question, 10))))!;
        document["howSure"]!["clearFirst"] = "yes";
        using var wrong = JsonDocument.Parse(document.ToJsonString());

        _schema.Evaluate(wrong.RootElement).IsValid.ShouldBeFalse();
    }

    [Fact]
    public void An_emergency_has_a_head_only()
    {
        var question = Asked.Club().First(q => q.Athlete.Id == "p16");
        foreach (var (_, part) in Parts(question).Where(p => p.Name != "what-if"))
            JsonNode.Parse(Document(question, part))!.AsObject().Select(p => p.Key).ShouldBe(["schemaVersion", "stamp", "athlete"]);
    }

    [Fact]
    public void Every_property_is_described()
    {
        var bare = new List<string>();
        Visit(JsonNode.Parse(File.ReadAllText(_file))!, "", bare);
        bare.ShouldBeEmpty();
    }

    private static IEnumerable<(string Name, Action<JsonExplanation> Part)> Parts(Question question)
    {
        yield return ("why", json => json.Write(Derivation.Of(Asked.Book, _loop, question, Asked.Book.Variants[2])));
        yield return ("why-not", json => json.Write(WhyNot.Of(Asked.Book, _loop, question, Asked.Answer(question))));
        // The two that take longest: one athlete of each kind.
        if (question.Athlete.Id is "p02" or "p03" or "p06" or "p14" or "p16" or "p17")
        {
            yield return ("turning-points", json => json.Write(TurningPointFinder.Find(Asked.Book, question)));
            yield return ("next-measurement", json => json.Write(NextMeasurementFinder.Find(Asked.Book, question)));
        }
        yield return ("how-sure", json => json.Write(HowSureCount.Count(Asked.Book, question, 20)));
        foreach (var change in new[] { "hip-flexion both=95 deg", "hex-bars=0", "low-back-pain-worst=6 points", "chest-pain-fainting-or-breathless=yes" })
        {
            if (WhatIf.Ask(Asked.Book, _loop, question, [change], new DiagnosticBag()) is { } whatIf)
                yield return ("what-if", json => json.Write(whatIf));
        }
    }

    private static string Document(Question question, Action<JsonExplanation> part)
    {
        using var stream = new MemoryStream();
        using (var json = new JsonExplanation(stream, Asked.Book, Asked.Answer(question)))
        {
            part(json);
            json.Finish();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Valid(string text, string who)
    {
        using var document = JsonDocument.Parse(text);
        var result = _schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var faults = (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).Take(5);
        result.IsValid.ShouldBeTrue($"{who}: {string.Join('\n', faults)}");
    }

    private static void Visit(JsonNode node, string path, List<string> bare)
    {
        if (node is JsonArray array)
        {
            foreach (var item in array.OfType<JsonNode>())
                Visit(item, path, bare);
        }
        if (node is not JsonObject map)
            return;
        foreach (var (name, schema) in map["properties"] as JsonObject ?? [])
        {
            if (string.IsNullOrWhiteSpace((string?)schema!["description"]))
                bare.Add($"{path}/{name}");
        }
        foreach (var (name, child) in map)
        {
            if (child is not null && name is not ("enum" or "required" or "const"))
                Visit(child, $"{path}/{name}", bare);
        }
    }
}
