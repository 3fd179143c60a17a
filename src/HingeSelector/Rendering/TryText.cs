using HingeSelector.Reading;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Reads the examples of a rule aloud.</summary>
internal static class TryText
{
    /// <summary>What is given, for which variant, and what is expected.</summary>
    public static string Of(RuleBook book, RuleExample example)
    {
        var variant = example.Variant is { } index ? $" for {book.Variants[index].Id}" : "";
        return $"{example.At.Value}{variant}, given {(example.Given.Entries.Count == 0 ? "nothing" : string.Join("; ", example.Given.Entries.Select(e => $"{e.Key.Value} {Of(e.Value)}")))}";
    }

    /// <summary>A node on one line.</summary>
    public static string Of(YamlNode node) => node switch
    {
        YamlMap map => string.Join(", ", map.Entries.Select(e => $"{e.Key.Value} {Of(e.Value)}")),
        YamlList { Items.Count: 0 } => "none",
        YamlList list => string.Join(" + ", list.Items.Select(Of)),
        _ => ((YamlScalar)node).Value,
    };
}
