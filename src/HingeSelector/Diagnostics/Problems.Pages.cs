namespace HingeSelector.Diagnostics;

/// <content>Pages: HS4xxx.</content>
public static partial class Problems
{
    /// <summary>HS4001: a measured word without a page that says how it is measured.</summary>
    public static Diagnostic MissingProtocolPage(SourceSpan at, string protocol, IReadOnlyList<string> words, IReadOnlyCollection<string> pages)
        => Warning("HS4001", at, $"No page says how {OneOfAll(words)} is measured: content/protocols/{protocol}.md does not exist.", NearestName.Find(protocol, pages) is { } near ? $"Did you mean the page '{near}'?" : "Write the page, or name one that exists under 'protocol'.");

    /// <summary>HS4002: a measured word that names no page.</summary>
    public static Diagnostic NoProtocolPage(SourceSpan at, string word)
        => Warning("HS4002", at, $"'{word}' names no page that says how it is measured.", "Add 'protocol:' with the name of a page in content/protocols.");

    private static string OneOfAll(IReadOnlyList<string> words) => words.Count == 1 ? $"'{words[0]}'" : $"'{words[0]}' (and {words.Count - 1} more)";
}
