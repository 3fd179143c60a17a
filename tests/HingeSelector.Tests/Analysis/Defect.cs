using HingeSelector.Rules;

namespace HingeSelector.Tests.Analysis;

/// <summary>A fault planted into the shipped rules.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Code">The diagnostic that must tell it.</param>
/// <param name="Plant">Plants it.</param>
internal sealed record Defect(string Name, string Code, Func<RuleFiles, RuleFiles> Plant)
{
    public const string File = "planted/planted.yaml";

    /// <summary>One more file of rules; each rule is written as <c>id | lines of when | conclusions</c>, lines apart by semicolons.</summary>
    public static Defect OfRules(string name, string code, params string[] rules) => OfFile(name, code, "rules:\n" + string.Concat(rules.Select(Rule)));

    public static Defect OfFile(string name, string code, string text) => new(name, code, f => f.With(File, text));

    public static Defect OfChange(string name, string code, string path, string right, string wrong) => new(name, code, f => Changed(f, path, right, wrong));

    public static RuleFiles Changed(RuleFiles files, string path, string right, string wrong)
    {
        var text = files.Texts[path];
        var place = text.IndexOf(right, StringComparison.Ordinal);
        place.ShouldBeGreaterThanOrEqualTo(0, $"'{right}' in {path}");
        return files.With(path, text[..place] + wrong + text[(place + right.Length)..]);
    }

    public static string Rule(string rule)
    {
        var parts = rule.Split('|', StringSplitOptions.TrimEntries);
        var lines = parts[1].Split(';', StringSplitOptions.TrimEntries);
        var then = parts[2].Split(';', StringSplitOptions.TrimEntries);
        return $"  - rule: {parts[0]}\n    when:\n{string.Concat(lines.Select(l => $"      {l}\n"))}    then:\n{string.Concat(then.Select(t => $"      - {t}\n"))}    because: Planted.\n    grade: practice\n    sources: []\n";
    }
}
