using System.Globalization;
using HingeSelector.Examples.Covering;

namespace HingeSelector.Rendering;

/// <summary>What examples show and do not show of their rules.</summary>
public static class CoverageText
{
    /// <summary>What is missing by rule and condition, and the share that is shown.</summary>
    public static IEnumerable<string> Rows(CoverageReport report)
    {
        foreach (var rule in report.Missing.GroupBy(i => i.Rule.Index))
        {
            yield return $"{rule.First().Rule.Span.FileAndLine}: {rule.First().Rule.Id}";
            foreach (var line in rule.GroupBy(i => i.Line.Condition.Span))
                yield return $"    {line.First().Line.Condition.Text}   no example shows it {string.Join(", ", line.Select(i => i.Says))}";
            yield return "";
        }
        var rules = report.Items.Select(i => i.Rule.Index).Distinct().Count();
        yield return $"{report.Items.Count - report.Missing.Count} of {report.Items.Count} shown by the examples of {rules} rules: {Percent(report.Percent)}.";
    }

    /// <summary>Writes the report as JSON.</summary>
    public static void WriteJson(Stream output, CoverageReport report) => JsonPages.Write(output, json =>
    {
        json.WriteNumber("needed", report.Items.Count);
        json.WriteNumber("shown", report.Items.Count - report.Missing.Count);
        json.WriteNumber("percent", Math.Round(report.Percent, 2));
        JsonPages.List(json, "missing", report.Missing, i =>
        {
            json.WriteString("rule", i.Rule.Id);
            json.WriteString("condition", i.Line.Condition.Text);
            json.WriteString("at", i.Line.Condition.Span.ToString());
            json.WriteString("need", i.Says);
        });
    });

    /// <summary>A share, cut and never rounded up: 100 % means all.</summary>
    internal static string Percent(double percent) => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(percent * 10) / 10:0.#} %");
}
