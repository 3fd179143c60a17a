namespace HingeSelector.Screening;

/// <summary>The words of a held height: as a list names its parts, and as a single one is typed.</summary>
internal static class HeldWords
{
    /// <summary>The height itself.</summary>
    public const string Height = "held-height";

    /// <summary>The pull in which it was seen.</summary>
    public const string Variant = "held-height-variant";

    /// <summary>Parts of an entry beside the pull and the height, in the order in which they are written.</summary>
    public static IReadOnlyList<(string Part, string Word)> Parts { get; } =
        [("grip", "held-height-grip"), ("stance", "held-height-stance"), ("empty bar", "held-height-empty-bar"), ("weight", "first-working-weight")];
}
