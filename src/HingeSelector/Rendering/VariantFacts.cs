using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Reads what a variant's file answers to the words of the variants.</summary>
internal static class VariantFacts
{
    /// <summary>The answer as written in the file.</summary>
    public static string Of(RuleBook book, Variant variant, string word)
    {
        var known = book.Vocabulary[word];
        return known.Print(variant.Words.First(w => w.Slot == known.Slot).Value);
    }

    /// <summary>Whether the hands hold a straight bar.</summary>
    public static bool OnStraightBar(RuleBook book, Variant variant) => Of(book, variant, "implement") == "straight-bar";

    /// <summary>Whether a bar is held: straight, or with handles beside the body.</summary>
    public static bool OnBar(RuleBook book, Variant variant) => Of(book, variant, "implement") is "straight-bar" or "hex-bar";
}
