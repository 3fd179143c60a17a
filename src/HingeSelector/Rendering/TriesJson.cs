using System.Text.Json;
using HingeSelector.Examples;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>The outcome of examples as JSON.</summary>
/// <param name="book">The rules.</param>
public sealed class TriesJson(RuleBook book)
{
    /// <summary>Writes every example with what was expected and what came of it; conditions with values only where they differ.</summary>
    public void Write(Stream output, IReadOnlyList<ExampleResult> results) => JsonPages.Write(output, json =>
    {
        json.WriteString("rulesHash", book.Hash);
        json.WriteNumber("examples", results.Count);
        json.WriteNumber("otherwise", results.Count(r => !r.Agrees));
        JsonPages.List(json, "tries", results, r => WriteOne(json, r));
    });

    private void WriteOne(Utf8JsonWriter json, ExampleResult result)
    {
        var example = result.Example;
        json.WriteString("rule", result.Rule.Id);
        json.WriteString("at", example.At.Span.ToString());
        json.WriteString("variant", example.Variant is { } variant ? book.Variants[variant].Id : null);
        json.WriteString("given", TriesText.Given(example));
        json.WriteString("expected", ExampleText.Say(example.Expect));
        json.WriteString("actual", result.Found is { } found ? ExampleText.Say(found) : null);
        json.WriteBoolean("agrees", result.Agrees);
        if (result is { Agrees: false, Case: { } one })
            JsonPages.List(json, "conditions", LineState.All(one), l => WriteLine(json, l));
    }

    private static void WriteLine(Utf8JsonWriter json, LineState line)
    {
        json.WriteString("condition", line.Condition.Text);
        json.WriteString("at", line.Condition.Span.ToString());
        json.WriteString("truth", ExampleText.SayOfCondition(line.Truth));
        JsonPages.List(json, "values", line.Values, v =>
        {
            json.WriteString("name", v.Name);
            json.WriteString("value", v.Value);
            json.WriteString("distance", v.Distance);
        });
    }
}
