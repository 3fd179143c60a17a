using System.Text.Json;
using HingeSelector.Editing;
using HingeSelector.Reading;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>A rule as one JSON document: what <see cref="RuleText"/> tells, with ids beside the words.</summary>
public static class JsonRule
{
    /// <summary>Writes the document.</summary>
    public static void Write(Stream output, RuleBook book, Rule rule)
    {
        using var json = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        json.WriteStartObject();
        json.WriteNumber("schemaVersion", JsonAnswer.SchemaVersion);
        json.WriteString("rulesHash", book.Hash);
        WritePlace(json, rule);
        json.WriteString("topic", rule.Topic);
        json.WriteBoolean("perCandidate", rule.PerCandidate);
        json.WriteBoolean("afterSetUp", rule.AfterSetUp);
        WriteTexts(json, "variants", book.Variants.Where(v => rule.PerCandidate && (rule.Variants & (1UL << v.Index)) != 0).Select(v => v.Id));
        WriteTexts(json, "when", rule.Conditions.Select(c => c.Text));
        WriteTexts(json, "whenInWords", rule.Conditions.SelectMany(c => ConditionText.Of(book, c)));
        WriteTexts(json, "then", rule.Conclusions.Select(c => ConclusionText.Of(book, c)));
        json.WriteString("because", rule.Because);
        json.WriteString("grade", GradeText.Word(rule.Grade));
        json.WriteBoolean("disputed", rule.Disputed);
        WriteSources(json, book, rule);
        WriteFindings(json, "reads", "givenBy", RuleText.FindingsRead(book, rule).Select(f => (f, book.RulesOfFinding[f.Index].Select(i => book.Rules[i]))));
        WriteFindings(json, "gives", "readBy", RuleLister.Given(book, rule).Select(f => (f, RuleText.ReadersOf(book, f))));
        WriteTries(json, book, rule);
        json.WriteEndObject();
        json.Flush();
        output.Write("\n"u8);
    }

    private static void WritePlace(Utf8JsonWriter json, Rule rule)
    {
        json.WriteString("id", rule.Id);
        json.WriteString("file", rule.Span.Source?.Path);
        json.WriteNumber("line", rule.Span.Line + 1);
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static void WriteSources(Utf8JsonWriter json, RuleBook book, Rule rule)
    {
        json.WriteStartArray("sources");
        foreach (var source in rule.Sources.Select(s => book.Sources[s]))
        {
            json.WriteStartObject();
            json.WriteString("id", source.Id);
            json.WriteString("cite", source.Cite);
            json.WriteString("kind", source.Kind);
            json.WriteString("read", source.Read);
            json.WriteString("sample", source.Sample);
            json.WriteString("note", source.Note);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteFindings(Utf8JsonWriter json, string name, string rulesName, IEnumerable<(Finding Finding, IEnumerable<Rule> Rules)> findings)
    {
        json.WriteStartArray(name);
        foreach (var (finding, rules) in findings)
        {
            json.WriteStartObject();
            json.WriteString("finding", finding.Id);
            json.WriteString("label", finding.Label);
            json.WriteStartArray(rulesName);
            foreach (var rule in rules)
            {
                json.WriteStartObject();
                WritePlace(json, rule);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteTries(Utf8JsonWriter json, RuleBook book, Rule rule)
    {
        json.WriteStartArray("tries");
        foreach (var example in rule.Tries)
        {
            json.WriteStartObject();
            json.WritePropertyName("given");
            WriteNode(json, example.Given);
            json.WriteString("for", example.Variant is { } variant ? book.Variants[variant].Id : null);
            json.WriteString("expect", example.At.Value);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteNode(Utf8JsonWriter json, YamlNode node)
    {
        switch (node)
        {
            case YamlMap map:
                json.WriteStartObject();
                foreach (var (key, value) in map.Entries)
                {
                    json.WritePropertyName(key.Value);
                    WriteNode(json, value);
                }
                json.WriteEndObject();
                break;
            case YamlList list:
                json.WriteStartArray();
                foreach (var item in list.Items)
                    WriteNode(json, item);
                json.WriteEndArray();
                break;
            default:
                json.WriteStringValue(((YamlScalar)node).Value);
                break;
        }
    }
}
