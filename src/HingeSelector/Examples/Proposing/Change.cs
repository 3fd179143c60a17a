using System.Buffers;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Examples.Proposing;

/// <summary>A change against an example that fires.</summary>
/// <param name="Facts">Facts that differ.</param>
/// <param name="Variant">Index of the variant; null where it stays.</param>
internal sealed record Change(IReadOnlyList<FactChange> Facts, int? Variant)
{
    private static readonly SearchValues<char> _marks = SearchValues.Create(",:#{}[]'\"");

    /// <summary>The change as an example.</summary>
    public RuleExample Against(RuleExample fired, Truth expect)
    {
        YamlScalar Scalar(string text) => new(text, false, fired.At.Span);
        var map = new YamlMap([.. Facts.Select(f => new KeyValuePair<YamlScalar, YamlNode>(Scalar(f.Name), Scalar(f.Value)))], fired.At.Span);
        return fired with { Variant = Variant ?? fired.Variant, Expect = expect, Changes = map };
    }

    /// <summary>The key under which it stands, for what the rule then does.</summary>
    public string Key(Truth found)
    {
        if (Facts.Count == 0)
            return ExampleReader.ForKeys.First(k => k.Expect == found).Key;
        return found == Truth.Open && Variant is null && Facts is [{ IsUnknown: true }] ? ExampleReader.WithoutKey : ExampleReader.WithKeys.First(k => k.Expect == found).Key;
    }

    /// <summary>The item of the list under the key.</summary>
    public string Item(Truth found, RuleBook book)
    {
        var key = Key(found);
        if (Facts.Count == 0)
            return book.Variants[Variant!.Value].Id;
        if (key == ExampleReader.WithoutKey)
            return Quoted(Facts[0].Name);
        var pairs = Facts.Select(f => $"{Quoted(f.Name)}: {Quoted(f.Value)}").ToList();
        if (Variant is { } variant)
            pairs.Insert(0, $"{ExampleReader.ForKey}: {book.Variants[variant].Id}");
        return pairs.Count == 1 ? pairs[0] : $"{{{string.Join(", ", pairs)}}}";
    }

    // In brackets a comma would end the name.
    private static string Quoted(string text) => text.AsSpan().IndexOfAny(_marks) >= 0 ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'" : text;
}
