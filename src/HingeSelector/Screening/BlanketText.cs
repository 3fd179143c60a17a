using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads a line such as <c>all no, asked by R. Idris on 2026-11-24</c>.</summary>
internal static partial class BlanketText
{
    /// <summary>Reads one.</summary>
    /// <returns>The answer, or null when nothing is said or the line is faulty.</returns>
    /// <remarks>A line without a name or a date does not count: nobody would answer for having asked.</remarks>
    public static BlanketAnswer? Read(WordGroup group, Typed typed, DateOnly on, DiagnosticBag bag)
    {
        var text = typed.Text.Trim();
        var without = AnswerText.WithoutValue(typed);
        if (without == FactValue.Missing)
            return null;
        if (without?.State == FactState.Refused)
            return new BlanketAnswer(group, null, null, true, typed);
        var match = Form().Match(typed.Text);
        if (!match.Success || match.Groups["answer"].Value.Trim() != group.Blanket)
        {
            var problem = Problems.BadBlanket(typed.Span, group.Id, typed.Shown, group.Blanket!);
            bag.Add(Lacks(text, group) is { } what ? problem with { Hint = $"It lacks {what}. {problem.Hint}" } : problem);
            return null;
        }
        var day = match.Groups["date"];
        var date = Dates.Past(typed.Part(day.Index, day.Length), $"The answer to all of '{group.Id}'", on, bag);
        return date is null ? null : new BlanketAnswer(group, date, match.Groups["who"].Value.Trim(), false, typed);
    }

    private static string? Lacks(string text, WordGroup group)
    {
        if (!text.StartsWith(group.Blanket!, StringComparison.Ordinal))
            return null;
        return text.Contains("asked by", StringComparison.Ordinal) ? "the day on which it was asked" : "the name of who asked";
    }

    [GeneratedRegex(@"^\s*(?<answer>[^,]+),\s*asked by\s+(?<who>\S.*?)\s+on\s+(?<date>\S+)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
