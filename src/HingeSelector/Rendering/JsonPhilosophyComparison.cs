using System.Text.Json;
using HingeSelector.Comparing;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Writes a comparison of two philosophies as one JSON document; its shape is rules/schema/philosophy-comparison.schema.json.</summary>
public static class JsonPhilosophyComparison
{
    /// <summary>Version of the shape.</summary>
    public const int SchemaVersion = 1;

    /// <summary>Writes the document.</summary>
    public static void Write(Stream output, PhilosophyComparison comparison, DateOnly on)
    {
        using var json = new Utf8JsonWriter(output, JsonDocumentStyle.Options);
        var change = new JsonChange(json);
        var book = comparison.Book;
        json.WriteStartObject();
        json.WriteNumber("schemaVersion", SchemaVersion);
        json.WriteStartObject("stamp");
        json.WriteString("toolVersion", Stamps.Tool);
        json.WriteString("rulesHash", book.Hash);
        json.WriteString("from", comparison.From.Id);
        json.WriteString("to", comparison.To.Id);
        json.WriteString("on", StampText.Date(on));
        json.WriteEndObject();
        json.WriteStartArray("weights");
        foreach (var criterion in book.Criteria)
        {
            json.WriteStartObject();
            json.WriteString("criterion", criterion.Id);
            json.WriteNumber("base", criterion.Weight);
            json.WriteNumber("from", comparison.From.Weights[criterion.Index]);
            json.WriteNumber("to", comparison.To.Weights[criterion.Index]);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("rules");
        foreach (var one in new[] { comparison.From, comparison.To }.SelectMany(p => book.Overlays.GetValueOrDefault(p.Id)?.Changes ?? []))
            JsonPhilosophy.Write(json, one);
        json.WriteEndArray();
        json.WriteNumber("asked", comparison.Comparison.Asked);
        json.WriteNumber("changed", comparison.Comparison.Changes.Count);
        IReadOnlyList<string> criteria = [.. book.Criteria.Select(c => c.Id)];
        change.Groups(comparison.Groups, criteria, criteria);
        json.WriteEndObject();
        json.Flush();
        output.Write("\n"u8);
    }
}
