using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>A single value; always text here, whatever other YAML readers would make of it.</summary>
/// <param name="Value">The text.</param>
/// <param name="Quoted">Whether the author quoted it.</param>
/// <param name="Span">Where.</param>
public sealed record YamlScalar(string Value, bool Quoted, SourceSpan Span) : YamlNode(Span)
{
    /// <inheritdoc/>
    public override string KindName => Value.Length == 0 ? "an empty value" : "a single value";
}
