using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>A list.</summary>
/// <param name="Items">Its items in order.</param>
/// <param name="Span">Where.</param>
public sealed record YamlList(IReadOnlyList<YamlNode> Items, SourceSpan Span) : YamlNode(Span)
{
    /// <inheritdoc/>
    public override string KindName => "a list";
}
