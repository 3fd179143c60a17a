using HingeSelector.Rules.Conclusions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Checking;

/// <summary>Which rules of the base no philosophy may loosen, with what they read directly or through findings.</summary>
/// <remarks>
/// Sealed are stops, cautions, withheld cues, every rule in the folders of stops, exclusions and cautions, and every exclusion or set-up
/// change that rests on pain, history, clearance, a stop question or age. From them the seal spreads over the rule graph: to the rules behind
/// each finding that a sealed rule reads, and, where a sealed rule reads the chosen set-up, to the requests that decide where the hands start.
/// Units, ranges, errors and limits of words stand in the vocabulary, which no philosophy can name.
/// </remarks>
public sealed class SealedRules
{
    private static readonly HashSet<string> _topics = new(StringComparer.Ordinal) { "stops", "exclusions", "cautions" };
    private static readonly HashSet<string> _groups = new(StringComparer.Ordinal) { "stop-questions", "pain", "must-answer", "must-answer-under-18" };
    private static readonly HashSet<string> _words = new(StringComparer.Ordinal) { "age", "history", "not-cleared", "clearance-state", "clearance-load-cap" };
    private static readonly HashSet<string> _placing = new(StringComparer.Ordinal) { "bar-height", "grip-width", "stance" };

    private readonly Vocabulary _vocabulary;
    private readonly ILookup<int, Rule> _concluding;
    private readonly Dictionary<string, string> _why = new(StringComparer.Ordinal);
    private readonly Dictionary<int, Rule> _wantPresent = [];
    private readonly Dictionary<int, Rule> _wantAbsent = [];
    private readonly Queue<(Rule Rule, bool More, bool Fewer)> _waiting = new();

    private SealedRules(Vocabulary vocabulary, IReadOnlyList<Rule> rules)
    {
        _vocabulary = vocabulary;
        _concluding = rules.SelectMany(r => r.Conclusions.OfType<FindingConclusion>().Select(c => (c.Finding, Rule: r))).ToLookup(p => p.Finding, p => p.Rule);
        var facts = new FactsBehind(rules);
        foreach (var rule in rules)
        {
            if (ByItself(rule, facts) is { } why)
                Seal(rule, why, true, false);
        }
        SetUpReader = rules.FirstOrDefault(r => r.AfterSetUp && _why.ContainsKey(r.Id));
        // A set-up may move neither way, so the requests behind it may neither hold more often nor less.
        foreach (var rule in SetUpReader is null ? [] : rules.Where(r => PlacingKey(r) is not null))
            Seal(rule, $"it requests {PlacingKey(rule)}, and the sealed rule '{SetUpReader!.Id}' reads the set-up that follows", true, true);
        while (_waiting.TryDequeue(out var next))
            Spread(next.Rule, next.More, next.Fewer);
    }

    /// <summary>How many rules are sealed.</summary>
    public int Count => _why.Count;

    /// <summary>A sealed rule that reads the chosen set-up; null without one.</summary>
    public Rule? SetUpReader { get; }

    /// <summary>Works out the seal over the rules of the base.</summary>
    public static SealedRules Of(Vocabulary vocabulary, IReadOnlyList<Rule> rules) => new(vocabulary, rules);

    /// <summary>Why a rule is sealed; null for a free one.</summary>
    public string? Why(Rule rule) => _why.GetValueOrDefault(rule.Id);

    /// <summary>A sealed rule that could go missing when a finding is present more often; null when none could.</summary>
    public Rule? ClearedBy(int finding) => _wantAbsent.GetValueOrDefault(finding);

    /// <summary>A sealed rule that could go missing when a finding is present less often; null when none could.</summary>
    public Rule? HeldUpBy(int finding) => _wantPresent.GetValueOrDefault(finding);

    /// <summary>The first request of a rule that decides where hands and feet are; null without one.</summary>
    public static string? PlacingKey(Rule rule) => rule.Conclusions.OfType<RequestConclusion>().Select(r => r.Request.Key).FirstOrDefault(_placing.Contains);

    private string? ByItself(Rule rule, FactsBehind facts)
    {
        foreach (var conclusion in rule.Conclusions)
        {
            if (conclusion is StopConclusion or CautionConclusion or WithholdConclusion)
                return conclusion is StopConclusion ? "it gives a stop" : conclusion is CautionConclusion ? "it gives a caution" : "it withholds cues";
        }
        if (_topics.Contains(rule.Topic))
            return $"it stands under rules/{rule.Topic}";
        return rule.Conclusions.Any(c => c is ExclusionConclusion or RequestConclusion) && facts.Of(rule).Where(IsOfSafety).Order(StringComparer.Ordinal).FirstOrDefault() is { } word
            ? $"its limit rests on '{word}'"
            : null;
    }

    private bool IsOfSafety(string word) => _words.Contains(word) || _vocabulary[word].Groups.Any(_groups.Contains);

    private void Seal(Rule rule, string why, bool more, bool fewer)
    {
        _why.TryAdd(rule.Id, why);
        _waiting.Enqueue((rule, more, fewer));
    }

    // "More": the rule must hold whenever it holds in the base. "Fewer": and not otherwise.
    private void Spread(Rule rule, bool more, bool fewer)
    {
        foreach (var (finding, present) in rule.Conditions.SelectMany(c => c.Findings))
        {
            var mayNotVanish = present ? more : fewer;
            var mayNotAppear = present ? fewer : more;
            var isNew = (mayNotVanish && _wantPresent.TryAdd(finding, rule)) | (mayNotAppear && _wantAbsent.TryAdd(finding, rule));
            foreach (var source in isNew ? _concluding[finding] : [])
                Seal(source, $"the sealed rule '{rule.Id}' reads what it concludes", mayNotVanish, mayNotAppear);
        }
    }
}
