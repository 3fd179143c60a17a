using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>A map; keys keep the author's order.</summary>
/// <param name="Entries">Its entries in order.</param>
/// <param name="Span">Where.</param>
public sealed record YamlMap(IReadOnlyList<KeyValuePair<YamlScalar, YamlNode>> Entries, SourceSpan Span) : YamlNode(Span)
{
    /// <inheritdoc/>
    public override string KindName => "a map";

    /// <summary>The value under a key, or null.</summary>
    public YamlNode? Find(string key)
    {
        foreach (var (k, v) in Entries)
        {
            if (k.Value == key)
                return v;
        }
        return null;
    }

    /// <summary>Whether a key stands among entries.</summary>
    internal static bool Holds(List<KeyValuePair<YamlScalar, YamlNode>> entries, string key)
    {
        foreach (var (k, _) in entries)
        {
            if (k.Value == key)
                return true;
        }
        return false;
    }
}
