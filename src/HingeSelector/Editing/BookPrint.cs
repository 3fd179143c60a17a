using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Editing;

/// <summary>What each rule of a book says, free of files, lines and comments: two books with equal prints decide alike.</summary>
public static partial class BookPrint
{
    /// <summary>The print of every rule by its id.</summary>
    public static IReadOnlyDictionary<string, string> Of(RuleBook book) => book.Rules.ToDictionary(r => r.Id, r => Of(book, r), StringComparer.Ordinal);

    private static string Of(RuleBook book, Rule rule)
    {
        var text = new StringBuilder();
        text.Append(rule.Topic).Append('\n');
        foreach (var condition in rule.Conditions)
            text.Append(FindingNumber().Replace(condition.Key, m => $"finding {book.Findings[int.Parse(m.Groups["index"].Value, CultureInfo.InvariantCulture)].Id} ")).Append('\n');
        foreach (var conclusion in rule.Conclusions)
            text.Append(Of(book, conclusion)).Append('\n');
        text.Append(CultureInfo.InvariantCulture, $"{rule.Because}\n{rule.Grade} {rule.Disputed} {rule.Variants:x}\n").AppendJoin(' ', rule.Sources).Append('\n');
        foreach (var example in rule.Tries)
            text.Append(Of(example.Given)).Append(CultureInfo.InvariantCulture, $" {example.Variant} {example.Expect}\n");
        return text.ToString();
    }

    private static string Of(RuleBook book, Conclusion conclusion) => conclusion switch
    {
        FindingConclusion finding => $"finding {book.Findings[finding.Finding].Id}",
        CueConclusion cue => $"cue {cue.Say} [{string.Join(' ', cue.Asks)}]",
        WithholdConclusion withhold => $"withhold [{string.Join(' ', withhold.Asks)}]",
        // The rest holds nothing but numbers and texts, which a record prints in full.
        _ => conclusion.ToString(),
    };

    private static string Of(YamlNode node) => node switch
    {
        YamlMap map => $"{{{string.Join(", ", map.Entries.Select(e => $"{e.Key.Value}: {Of(e.Value)}"))}}}",
        YamlList list => $"[{string.Join(", ", list.Items.Select(Of))}]",
        _ => ((YamlScalar)node).Value,
    };

    [GeneratedRegex("finding (?<index>[0-9]+) ", RegexOptions.CultureInvariant)]
    private static partial Regex FindingNumber();
}
