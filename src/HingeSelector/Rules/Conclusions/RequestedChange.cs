namespace HingeSelector.Rules.Conclusions;

/// <summary>One line of a set-up change.</summary>
/// <param name="Key">bar-height, grip-width, straps, lowering, load, repetitions, speed, footwear or stance.</param>
/// <param name="Word">The word asked for; null when a number is asked for.</param>
/// <param name="Number">Metres; null when a word is asked for.</param>
public sealed record RequestedChange(string Key, string? Word, double? Number)
{
    /// <summary>Words of each key, the most cautious first: where two rules differ, the first wins.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Words { get; } = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
    {
        ["bar-height"] = [LowestThatFits],
        ["grip-width"] = [],
        ["straps"] = ["none", "use", "offer"],
        ["lowering"] = ["dropped", "assisted", "controlled"],
        ["load"] = ["none", "light", "lower", "usual"],
        ["repetitions"] = ["fewer", "usual"],
        ["speed"] = ["controlled", "faster", "usual"],
        ["footwear"] = ["flat", "any"],
        ["stance"] = ["narrower", "wider", "standard"],
    };

    /// <summary>The bar as low as the joints allow and no lower.</summary>
    public const string LowestThatFits = "lowest that fits";
}
