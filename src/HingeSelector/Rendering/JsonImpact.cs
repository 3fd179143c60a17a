using System.Text.Json;
using HingeSelector.Comparing;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Writes an impact as one JSON document; its shape is rules/schema/impact.schema.json.</summary>
public static class JsonImpact
{
    /// <summary>Version of the shape.</summary>
    public const int SchemaVersion = 1;

    /// <summary>Writes the document.</summary>
    public static void Write(Stream output, Impact impact, RuleBook from, RuleBook to, DateOnly on)
    {
        using var json = new Utf8JsonWriter(output, JsonDocumentStyle.Options);
        var change = new JsonChange(json);
        json.WriteStartObject();
        json.WriteNumber("schemaVersion", SchemaVersion);
        json.WriteStartObject("stamp");
        json.WriteString("toolVersion", Stamps.Tool);
        json.WriteString("rulesHashBefore", from.Hash);
        json.WriteString("rulesHashAfter", to.Hash);
        json.WriteString("on", StampText.Date(on));
        json.WriteEndObject();
        json.WriteBoolean("fails", impact.Fails);
        WriteGone(json, change, impact);
        json.WriteNumber("asked", impact.Comparison.Asked);
        json.WriteNumber("changed", impact.Comparison.Changes.Count);
        change.Strings("notCompared", impact.Comparison.OnlyOneSide);
        json.WriteStartArray("edits");
        for (var i = 0; i < impact.Edits.Count; i++)
            WriteEdit(json, impact.Edits[i], i, impact.Affected[i]);
        json.WriteEndArray();
        change.Groups(impact.Groups, [.. from.Criteria.Select(c => c.Id)], [.. to.Criteria.Select(c => c.Id)]);
        json.WriteEndObject();
        json.Flush();
        output.Write("\n"u8);
    }

    private static void WriteGone(Utf8JsonWriter json, JsonChange change, Impact impact)
    {
        json.WriteStartArray("gone");
        foreach (var gone in impact.Gone)
        {
            json.WriteStartObject();
            json.WriteString("id", gone.Id);
            json.WriteString("what", gone.What);
            json.WriteBoolean("acknowledged", gone.Acknowledged);
            change.Strings("athletes", gone.Athletes);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteEdit(Utf8JsonWriter json, Edit edit, int place, int affected)
    {
        json.WriteStartObject();
        json.WriteNumber("number", place + 1);
        json.WriteString("element", edit.Name);
        json.WriteBoolean("wordingOnly", edit.IsWording);
        json.WriteNumber("changes", affected);
        json.WriteStartArray("lines");
        foreach (var line in edit.Lines)
        {
            json.WriteStartObject();
            json.WriteString("file", line.Span.Source?.Path);
            json.WriteNumber("line", line.Span.Line + 1);
            json.WriteString("key", line.What);
            json.WriteString("before", line.Before);
            json.WriteString("after", line.After);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
