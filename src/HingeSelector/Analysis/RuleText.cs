using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>Finds the lines of a rule in its file.</summary>
internal static class RuleText
{
    /// <summary>The edit that takes a rule out; null when its file does not list it in the usual form.</summary>
    public static SuggestedEdit? Removal(Rule rule)
    {
        if (rule.Span.Source is not { } source || !source.Line(rule.Span.Line).TrimStart().StartsWith("- rule:", StringComparison.Ordinal))
            return null;
        var first = rule.Span.Line;
        var last = first;
        for (var i = first + 1; i < source.LineCount && (IsBlank(source, i) || Indent(source, i) > Indent(source, first)); i++)
        {
            if (!IsBlank(source, i))
                last = i;
        }
        // The blank line below goes with it, so that its neighbours stay one line apart.
        if (last + 1 < source.LineCount && source.Line(last + 1).Trim().Length == 0)
            last++;
        return new SuggestedEdit(source, first, 0, last + 1, 0, "", $"remove the rule '{rule.Id}'", true);
    }

    // A remark between two rules belongs to the one below it.
    private static bool IsBlank(SourceText source, int line) => source.Line(line).Trim() is "" or ['#', ..];

    private static int Indent(SourceText source, int line) => source.Line(line).Length - source.Line(line).TrimStart().Length;
}
