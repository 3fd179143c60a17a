using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>Sums up which facts are missing and how many rules wait for each.</summary>
public static class OpenSummary
{
    private const string NotDecided = "not decided";

    private static readonly string[] _states = ["refused", "expired", "not measured"];

    /// <summary>By why the fact is missing: the facts, those that most rules wait for first.</summary>
    public static IReadOnlyList<(string State, IReadOnlyList<(string Word, int Rules)> Words)> Of(IEnumerable<OpenRule> open)
    {
        var waiting = new Dictionary<(string State, string Word), HashSet<string>>();
        foreach (var rule in open)
        {
            foreach (var word in rule.Missing)
            {
                var key = (StateOf(rule, word), word);
                if (!waiting.TryGetValue(key, out var rules))
                    waiting.Add(key, rules = new HashSet<string>(StringComparer.Ordinal));
                rules.Add(rule.Trace.Rule.Id);
            }
        }
        return [.. waiting.GroupBy(w => w.Key.State, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (g.Key, (IReadOnlyList<(string, int)>)[.. g.OrderByDescending(w => w.Value.Count).ThenBy(w => w.Key.Word, StringComparer.Ordinal).Select(w => (w.Key.Word, w.Value.Count))]))];
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
        var words = Of(open).Where(s => s.State != NotDecided).SelectMany(s => s.Words.Select(w => (w.Word, w.Rules, s.State)))
            .OrderByDescending(w => w.Rules).ThenBy(w => w.Word, StringComparer.Ordinal).ToList();
        var named = words.Take(most).Select(w => w.State == "not measured" ? w.Word : $"{w.Word} ({w.State})");
        return words.Count == 0 ? null : string.Join(", ", named) + (words.Count > most ? $" and {words.Count - most} more" : "");
    }

    private static string StateOf(OpenRule rule, string word)
    {
        var values = rule.Trace.Facts.Where(f => f.Word == word || f.Word.StartsWith(word + ",", StringComparison.Ordinal)).Select(f => f.Value).ToList();
        return _states.FirstOrDefault(values.Contains) ?? NotDecided;
    }
}
