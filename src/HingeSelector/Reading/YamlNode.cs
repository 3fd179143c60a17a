using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>A node of a YAML file with its place.</summary>
/// <param name="Span">Where the node starts.</param>
public abstract record YamlNode(SourceSpan Span)
{
    /// <summary>What a message calls this kind of node.</summary>
    public abstract string KindName { get; }
}
