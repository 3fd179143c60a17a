using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Says where a word of advice comes from: rule, place, grade, sources, facts read.</summary>
public static class TraceText
{
    private const string ComparedWord = "back-moment";

    /// <summary>Rule id with file and line.</summary>
    public static string Rule(Rule rule) => $"{rule.Id} at {rule.Span.FileAndLine}";

    /// <summary>Grade, flag and sources, in brackets.</summary>
    public static string Trust(Rule rule)
        => $"[{GradeText.Word(rule.Grade)}{(rule.Disputed ? ", disputed" : "")}{(rule.Change is { } change ? $", {PhilosophyText.Word(change.Kind)} by {change.Philosophy}" : "")}]{(rule.Sources.Count > 0 ? $" ({string.Join(", ", rule.Sources)})" : "")}";

    /// <summary>The facts that a rule read, at most so many.</summary>
    public static string Facts(RuleTrace trace, int most = int.MaxValue)
    {
        var told = string.Join("; ", trace.Facts.Take(most).Select(Fact));
        var more = trace.Facts.Count - most;
        return trace.Facts.Count == 0 ? "applies to everyone" : more > 0 ? $"{told}; and {more} more" : told;
    }

    /// <summary>One fact with its value. A comparison names its basis.</summary>
    public static string Fact(FactRead fact)
    {
        var basis = fact.Word.StartsWith(ComparedWord, StringComparison.Ordinal) && fact.Value.EndsWith('%') ? " of this athlete's conventional pull at equal load" : "";
        // The answer of a finding is a sentence by itself.
        return fact.Value.StartsWith("is ", StringComparison.Ordinal) ? $"{fact.Label} {fact.Value}" : $"{fact.Label}: {fact.Value}{basis}";
    }
}
