using System.Text.Encodings.Web;
using System.Text.Json;

namespace HingeSelector.Rendering;

/// <summary>How every JSON document is laid out, so that the same content gives the same bytes.</summary>
internal static class JsonDocumentStyle
{
    /// <summary>Indented, plain line feeds, no needless escapes.</summary>
    public static JsonWriterOptions Options { get; } = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
