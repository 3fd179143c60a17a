using HingeSelector.Editing;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Lists rules, one row each.</summary>
public static class RuleListText
{
    /// <summary>Id, place, first conclusion, and the finding through which the rule rests on what was asked about.</summary>
    public static string Row(RuleBook book, ListedRule listed)
    {
        var (rule, through) = (listed.Rule, listed.Through);
        var row = $"{rule.Id}  {rule.Span.FileAndLine}  {ConclusionText.Of(book, rule.Conclusions[0])}";
        return through is null ? row : $"{row}  (through the finding {through.Id})";
    }
}
