namespace HingeSelector.Editing;

/// <summary>The order in which keys are written; a key that is not in the list stays behind those that are, as its author placed it.</summary>
internal static class KeyOrder
{
    private static readonly string[] _ruleFile = ["findings", "rules"];
    private static readonly string[] _philosophyFile = ["philosophy", "label", "summary", "weights", "change", "off", "add"];
    private static readonly string[] _variantFile = ["variant", "label", "summary", "kit", "posture", "words", "claims", "strength-relation", "cautions"];
    private static readonly string[] _rule = ["rule", "when", "then", "because", "reason", "grade", "disputed", "sources", "accepts", "tries"];
    private static readonly string[] _finding = ["finding", "label", "means"];
    private static readonly string[] _try = ["given", "for", "expect"];
    private static readonly string[] _stop = ["level", "answers", "see", "say"];
    private static readonly string[] _cue = ["say", "asks"];

    /// <summary>Keys at the top of a file.</summary>
    public static IReadOnlyList<string> OfFile(string path) => path switch
    {
        _ when path.StartsWith("philosophies/", StringComparison.Ordinal) => _philosophyFile,
        _ when path.StartsWith("variants/", StringComparison.Ordinal) => _variantFile,
        _ => _ruleFile,
    };

    /// <summary>Keys of the maps that stand below a key; none where the author's order means something.</summary>
    public static IReadOnlyList<string> Below(string key) => key switch
    {
        "rules" or "add" or "change" or "off" => _rule,
        "findings" => _finding,
        "tries" => _try,
        "stop" => _stop,
        "cue" => _cue,
        _ => [],
    };
}
