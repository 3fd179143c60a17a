using HingeSelector.Cli.Frame;

namespace HingeSelector.Cli.Ruling;

/// <summary>The formats of verbs about rules.</summary>
internal static class OutputFormat
{
    /// <summary>Help of the option.</summary>
    public const string Help = "text, json (default: text).";

    private static readonly string[] _all = ["text", "json"];

    /// <summary>Whether JSON is asked for.</summary>
    /// <exception cref="UsageException">There is no such format.</exception>
    public static bool IsJson(string? typed)
        => typed is null || _all.Contains(typed) ? typed == "json" : throw new UsageException($"'{typed}' is not a format.", Slip.DidYouMeanOneOf(typed, _all));
}
