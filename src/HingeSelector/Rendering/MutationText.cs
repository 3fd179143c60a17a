using HingeSelector.Examples.Mutating;
using HingeSelector.Examples.Proposing;

namespace HingeSelector.Rendering;

/// <summary>Mutants that no example notices, each with the example that is missing.</summary>
public static class MutationText
{
    /// <summary>Survivors by rule, the missing examples as YAML, and the share that is noticed.</summary>
    /// <param name="report">The report.</param>
    /// <param name="proposals">Examples that would notice survivors.</param>
    public static IEnumerable<string> Rows(MutationReport report, IReadOnlyList<Proposal> proposals)
    {
        foreach (var rule in report.Survivors.GroupBy(m => m.Rule.Index))
        {
            yield return $"{rule.First().Rule.Span.FileAndLine}: {rule.First().Rule.Id}: no example notices";
            foreach (var mutant in rule)
                yield return $"    {mutant.Mutation.At.Text}   as   {mutant.Mutation.Says}";
            yield return "";
        }
        foreach (var row in ProposalText.Rows(proposals))
            yield return row;
        var unmatched = report.Survivors.Count - proposals.Sum(p => p.Kills.Count);
        if (unmatched > 0)
            yield return $"For {unmatched} of these no short change of an example that fires was found: they want an example in full.";
        yield return $"{report.Killed} of {report.Counted} mutants of conditions noticed: {CoverageText.Percent(report.Percent)}.";
        yield return $"{report.Equivalent} more ask the same as the rule wherever facts can lie and are not counted.";
        yield return $"{report.Conclusions} mutants of points, criteria and stop levels are not counted: examples say when a rule fires, not what follows.";
    }

    /// <summary>Writes the report as JSON.</summary>
    public static void WriteJson(Stream output, MutationReport report, IReadOnlyList<Proposal> proposals) => JsonPages.Write(output, json =>
    {
        json.WriteNumber("counted", report.Counted);
        json.WriteNumber("killed", report.Killed);
        json.WriteNumber("percent", Math.Round(report.Percent, 2));
        json.WriteNumber("equivalent", report.Equivalent);
        json.WriteNumber("conclusionsNotCounted", report.Conclusions);
        JsonPages.List(json, "survivors", report.Survivors, m =>
        {
            json.WriteString("rule", m.Rule.Id);
            json.WriteString("condition", m.Mutation.At.Text);
            json.WriteString("at", m.Mutation.At.Span.ToString());
            json.WriteString("kind", m.Mutation.Kind.ToString().ToLowerInvariant());
            json.WriteString("mutant", m.Mutation.Says);
            var missing = proposals.FirstOrDefault(p => p.Kills.Any(k => k.Changed.Conditions.SequenceEqual(m.Changed.Conditions) && k.Rule.Index == m.Rule.Index));
            json.WriteString("missingExample", missing is null ? null : $"{missing.Key}: [{missing.Item}]");
        });
    });
}
