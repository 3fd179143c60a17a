using System.Text.RegularExpressions;

namespace HingeSelector.Reading;

/// <summary>Values that YAML 1.1 readers turn into something else than the text that stands there.</summary>
public static partial class Trap
{
    /// <summary>Whether an unquoted value is one of them.</summary>
    public static bool IsOne(string value) => Words().IsMatch(value) || Numbers().IsMatch(value);

    [GeneratedRegex("^(y|n|Y|N|YES|NO|Yes|No|on|off|On|Off|ON|OFF|true|false|True|False|TRUE|FALSE|null|Null|NULL|~)$", RegexOptions.CultureInvariant)]
    private static partial Regex Words();

    // 1:30 (base sixty), 0x1f, 0o17, 017, 1_000, 1e3, .5 and .inf are numbers to some readers and texts to others.
    [GeneratedRegex(@"^(\d+(:[0-5]?\d)+|0x[0-9a-fA-F]+|0o?[0-7]+|\d[\d_]*_\d+|\d+(\.\d+)?[eE][-+]?\d+|\.\d+|[-+]?\.(inf|nan))$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Numbers();
}
