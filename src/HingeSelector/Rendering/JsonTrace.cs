using System.Text.Json;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Writes the rule behind a word of advice.</summary>
internal static class JsonTrace
{
    public static void Write(Utf8JsonWriter json, string property, RuleTrace trace)
    {
        json.WritePropertyName(property);
        WriteValue(json, trace);
    }

    /// <summary>An object with a text and the rule behind it; a text without a rule is the variant's own.</summary>
    public static void WriteText(Utf8JsonWriter json, string property, string text, RuleTrace? trace)
    {
        json.WriteStartObject();
        json.WriteString(property, text);
        if (trace is null)
            json.WriteNull("rule");
        else
            Write(json, "rule", trace);
        json.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter json, RuleTrace trace)
    {
        var rule = trace.Rule;
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("file", rule.Span.Source?.Path);
        json.WriteNumber("line", rule.Span.Line + 1);
        json.WriteString("because", rule.Because);
        json.WriteString("grade", GradeText.Word(rule.Grade));
        json.WriteBoolean("disputed", rule.Disputed);
        json.WriteStartArray("sources");
        foreach (var source in rule.Sources)
            json.WriteStringValue(source);
        json.WriteEndArray();
        json.WriteStartArray("facts");
        foreach (var fact in trace.Facts)
        {
            json.WriteStartObject();
            json.WriteString("word", fact.Word);
            json.WriteString("label", fact.Label);
            json.WriteString("value", fact.Value);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        if (rule.Change is { } change)
        {
            json.WritePropertyName("philosophyChange");
            JsonPhilosophy.Write(json, change);
        }
        json.WriteEndObject();
    }
}
