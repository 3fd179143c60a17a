using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Editing;

/// <summary>Finds the places of a file where an id stands as an id, and not as a word of a sentence.</summary>
internal sealed class Mentions
{
    // Below these keys stand words and findings as keys.
    private static readonly HashSet<string> _holdWordKeys = new(StringComparer.Ordinal) { "when", "given", "also with", "not with", "allow only", "words" };

    private static readonly Dictionary<IdKind, HashSet<string>> _holdIds = new()
    {
        [IdKind.Rule] = new(StringComparer.Ordinal) { "rule", "off", "of" },
        [IdKind.Finding] = new(StringComparer.Ordinal) { "finding", "of", "open without" },
        [IdKind.Source] = new(StringComparer.Ordinal) { "source", "sources", "error source", "of" },
        [IdKind.Word] = new(StringComparer.Ordinal) { "fact", "word", "not below", "of", "open without" },
    };

    private readonly IdKind _kind;
    private readonly Regex _token;
    private readonly List<SourceSpan> _places = [];

    private Mentions(IdKind kind, string id) => (_kind, _token) = (kind, Token(id));

    /// <summary>Every place in a tree.</summary>
    public static IReadOnlyList<SourceSpan> In(YamlNode root, IdKind kind, string id)
    {
        var mentions = new Mentions(kind, id);
        mentions.Walk(root, key: "", wordKeys: false);
        return mentions._places;
    }

    /// <summary>Matches an id that stands for itself: neither a part of a longer id nor of a longer word.</summary>
    public static Regex Token(string id) => new($"(?<![A-Za-z0-9-]){Regex.Escape(id)}(?![A-Za-z0-9-])", RegexOptions.CultureInvariant);

    private void Walk(YamlNode node, string key, bool wordKeys)
    {
        switch (node)
        {
            case YamlMap map:
                foreach (var (name, value) in map.Entries)
                    WalkEntry(name, value, wordKeys);
                break;
            case YamlList list:
                foreach (var item in list.Items)
                    Walk(item, key, wordKeys);
                break;
            case YamlScalar scalar when _holdIds[_kind].Contains(key) && IsId(scalar.Value.Split(',')[0].Trim()):
                _places.Add(scalar.Span);
                break;
        }
    }

    private void WalkEntry(YamlScalar name, YamlNode value, bool wordKeys)
    {
        if (wordKeys && (_kind is IdKind.Word or IdKind.Finding) && name.Value.Split(" or ").Any(part => IsId(part.Split(',')[0].Trim())))
            _places.Add(name.Span);
        Walk(value, name.Value, wordKeys || _holdWordKeys.Contains(name.Value));
    }

    // The whole text, not a part of it.
    private bool IsId(string text) => _token.Match(text) is { Success: true } match && match.Length == text.Length;
}
