using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Sums up which facts are missing and how many rules wait for each.</summary>
public static class OpenSummary
{
    private const string NotDecided = "not decided";

    private static readonly string[] _states = ["refused", "expired", "not measured"];

    /// <summary>By why the fact is missing: the facts, those that most rules wait for first.</summary>
    public static IReadOnlyList<MissingFacts> Of(IEnumerable<OpenRule> open)
    {
        var states = new SortedDictionary<string, Dictionary<string, HashSet<string>>>(StringComparer.Ordinal);
        foreach (var rule in open)
        {
            foreach (var word in rule.Missing)
            {
                var state = StateOf(rule, word);
                if (!states.TryGetValue(state, out var words))
                    states.Add(state, words = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal));
                if (!words.TryGetValue(word, out var rules))
                    words.Add(word, rules = new HashSet<string>(StringComparer.Ordinal));
                rules.Add(rule.Trace.Rule.Id);
            }
        }
        var summary = new List<MissingFacts>();
        foreach (var (state, words) in states)
        {
            var facts = new List<MissingFact>();
            foreach (var (word, rules) in words)
                facts.Add(new MissingFact(word, rules.Count, state));
            facts.Sort(MostWanted);
            summary.Add(new MissingFacts(state, facts));
        }
        return summary;
    }

    /// <summary>One sentence per state.</summary>
    /// <param name="open">The rules that cannot be decided.</param>
    /// <param name="most">How many facts to name.</param>
    public static IEnumerable<string> Sentences(IEnumerable<OpenRule> open, int most = int.MaxValue)
        => Of(open).Select(s =>
        {
            var more = s.Words.Count - most;
            return $"{s.State}: {string.Join(", ", s.Words.Take(most).Select(w => $"{w.Word} (leaves {w.Rules} {(w.Rules == 1 ? "rule" : "rules")} open)"))}{(more > 0 ? $" and {more} more" : "")}";
        });

    /// <summary>What people could still measure or ask, the most wanted first; null when nothing is missing.</summary>
    /// <param name="open">The rules that cannot be decided.</param>
    /// <param name="most">How many facts to name.</param>
    public static string? Missing(IEnumerable<OpenRule> open, int most)
    {
        // Stable: a fact missing for two reasons keeps the order of the reasons.
        var words = Of(open).Where(s => s.State != NotDecided).SelectMany(s => s.Words).Order(Comparer<MissingFact>.Create(MostWanted)).ToList();
        var named = words.Take(most).Select(w => w.State == "not measured" ? w.Word : $"{w.Word} ({w.State})");
        return words.Count == 0 ? null : string.Join(", ", named) + (words.Count > most ? $" and {words.Count - most} more" : "");
    }

    private static int MostWanted(MissingFact a, MissingFact b)
        => a.Rules != b.Rules ? b.Rules.CompareTo(a.Rules) : string.CompareOrdinal(a.Word, b.Word);

    private static string StateOf(OpenRule rule, string word)
    {
        var values = rule.Trace.Facts.Where(f => f.Word == word || f.Word.StartsWith(word + ",", StringComparison.Ordinal)).Select(f => f.Value).ToList();
        return _states.FirstOrDefault(values.Contains) ?? NotDecided;
    }
}
