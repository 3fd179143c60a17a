using HingeSelector.Editing;
using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>A rule read aloud: its page in words.</summary>
public static class RuleText
{
    /// <summary>The lines of a rule.</summary>
    public static IEnumerable<Line> Of(RuleBook book, Rule rule)
    {
        yield return Line.Title($"{rule.Id} ({rule.Span.FileAndLine})");
        yield return Line.Text("Asked", Asked(book, rule));
        foreach (var line in Labelled("When", rule.Conditions.Count == 0 ? ["always"] : rule.Conditions.SelectMany(c => ConditionText.Of(book, c))))
            yield return line;
        foreach (var line in Labelled("Then", rule.Conclusions.Select(c => ConclusionText.Of(book, c))))
            yield return line;
        yield return Line.Text("Because", rule.Because);
        yield return Line.Text("Grade", $"{GradeText.Word(rule.Grade)}: {GradeText.Meaning(rule.Grade)}{(rule.Disputed ? " Disputed: published evidence points both ways or against." : "")}");
        foreach (var line in Labelled("Source", rule.Sources.Select(s => Of(book.Sources[s]))))
            yield return line;
        foreach (var line in Labelled("Reads", FindingsRead(book, rule).Select(f => $"the finding \"{f.Label}\" ({f.Id}), given by {Places(book.RulesOfFinding[f.Index].Select(i => book.Rules[i]))}")))
            yield return line;
        foreach (var line in Labelled("Gives", RuleLister.Given(book, rule).Select(f => $"the finding \"{f.Label}\" ({f.Id}), read by {Places(ReadersOf(book, f))}")))
            yield return line;
        foreach (var line in Labelled("Try", rule.Tries.Count == 0 ? ["none yet"] : rule.Tries.Select(t => TryText.Of(book, t))))
            yield return line;
    }

    /// <summary>When and how often a rule is asked.</summary>
    public static string Asked(RuleBook book, Rule rule)
    {
        if (!rule.PerCandidate)
            return "once per athlete";
        var held = book.Variants.Where(v => (rule.Variants & (1UL << v.Index)) != 0).ToList();
        var whom = held.Count == book.Variants.Count ? "every variant" : string.Join(", ", held.Select(v => v.Id));
        return $"once per candidate{(rule.AfterSetUp ? ", after the set-up search" : "")}; can hold for {whom}";
    }

    /// <summary>Findings that a rule reads itself, each once.</summary>
    internal static IEnumerable<Finding> FindingsRead(RuleBook book, Rule rule)
        => rule.Conditions.SelectMany(c => c.Findings).Select(f => f.Finding).Distinct().Select(i => book.Findings[i]);

    /// <summary>Rules that read a finding themselves.</summary>
    internal static IEnumerable<Rule> ReadersOf(RuleBook book, Finding finding) => book.Rules.Where(r => RuleLister.Reads(r, finding.Index));

    private static string Of(Source source) => $"{source.Id}: {source.Cite} [{source.Kind}, read: {source.Read}]{(source.Note is { } note ? $" {note}" : "")}";

    private static string Places(IEnumerable<Rule> rules)
    {
        var told = string.Join("; ", rules.Select(r => $"{r.Id} ({r.Span.FileAndLine})"));
        return told.Length == 0 ? "no rule" : told;
    }

    // The label stands once, before the first of its lines.
    private static IEnumerable<Line> Labelled(string label, IEnumerable<string> texts) => texts.Select((text, i) => Line.Text(i == 0 ? label : "", text));
}
