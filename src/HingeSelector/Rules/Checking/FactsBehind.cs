using HingeSelector.Words;

namespace HingeSelector.Rules.Checking;

/// <summary>The measured and computed words on which a rule rests, directly or through findings.</summary>
public sealed class FactsBehind(IReadOnlyList<Rule> rules)
{
    private readonly Dictionary<int, HashSet<string>> _known = [];
    private readonly List<Rule> _concluding = [.. rules.Where(r => r.Finds)];

    /// <summary>Ids of the words; words of the variant do not count as facts.</summary>
    public IReadOnlySet<string> Of(Rule rule)
    {
        if (_known.TryGetValue(rule.Index, out var facts))
            return facts;
        facts = [];
        _known[rule.Index] = facts;
        foreach (var condition in rule.OpenConditions)
        {
            facts.UnionWith(condition.Reads.Where(r => r.Word.About != WordAbout.Variant && r.Word.Id != "variant").Select(r => r.Word.Id));
            foreach (var (finding, _) in condition.Findings)
            {
                foreach (var source in Concluding(finding))
                    facts.UnionWith(Of(source));
            }
        }
        return facts;
    }

    /// <summary>Rules that conclude a finding.</summary>
    public IEnumerable<Rule> Concluding(int finding)
        => _concluding.Where(r => r.Conclusions.OfType<Conclusions.FindingConclusion>().Any(c => c.Finding == finding));
}
