using System.Text.Encodings.Web;
using System.Text.Json;

namespace HingeSelector.Rendering;

/// <summary>Writes one JSON document the way every document here is written: indented, line feeds, plain letters, a line end last.</summary>
public static class JsonPages
{
    /// <summary>Writes a document.</summary>
    /// <param name="output">Where the bytes go; it stays open.</param>
    /// <param name="write">Writes the properties of the outermost object.</param>
    public static void Write(Stream output, Action<Utf8JsonWriter> write)
    {
        using (var json = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }
        output.Write("\n"u8);
        output.Flush();
    }

    /// <summary>Writes a list of objects under a name.</summary>
    public static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
