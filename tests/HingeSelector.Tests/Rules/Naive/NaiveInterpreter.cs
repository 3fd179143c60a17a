using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>Decides the rules by walking their trees, with a reading of its own; knows nothing of the compiled form.</summary>
internal sealed class NaiveInterpreter
{
    private readonly NaiveConditions _conditions;
    private readonly List<NaiveRule> _rules = [];
    private readonly List<NaiveRule> _ofAthlete;
    private readonly List<NaiveRule> _first;
    private readonly List<NaiveRule> _second;
    private readonly ILookup<string, NaiveRule> _concluding;
    private readonly List<string> _findings = [];

    public NaiveInterpreter(RuleFiles files, Vocabulary vocabulary)
    {
        var topics = files.Texts.Keys
            .Where(p => p.Contains('/') && !p.StartsWith("variants/", StringComparison.Ordinal) && !p.StartsWith("philosophies/", StringComparison.Ordinal))
            .Select(p => (YamlMap)YamlReader.Read(files.Source(p)!, new DiagnosticBag())!)
            .ToList();
        foreach (var finding in topics.SelectMany(t => Items(t.Find("findings"))))
            _findings.Add(Text(finding, "finding"));
        _conditions = new NaiveConditions(vocabulary, _findings.ToHashSet(StringComparer.Ordinal));
        foreach (var rule in topics.SelectMany(t => Items(t.Find("rules"))))
            _rules.Add(Read(rule));
        _ofAthlete = [.. _rules.Where(r => !r.AsksCandidate)];
        _first = [.. _rules.Where(r => r.AsksCandidate && !r.AsksChosenSetUp)];
        _second = [.. _rules.Where(r => r.AsksChosenSetUp)];
        _concluding = _rules.SelectMany(r => r.Findings.Select(f => (Finding: f, Rule: r))).ToLookup(p => p.Finding, p => p.Rule, StringComparer.Ordinal);
    }

    /// <summary>Findings, rules of the athlete, and rules of the candidates that do not read the chosen set-up.</summary>
    public NaiveResult First(CaseFacts facts)
    {
        var result = new NaiveResult();
        foreach (var finding in _findings)
            Find(finding, facts, result);
        var asked = Case(facts, -1, result);
        foreach (var rule in _ofAthlete)
            Note(rule, -1, _conditions.All(rule.When, asked), result);
        AskCandidates(_first, facts, result);
        return result;
    }

    /// <summary>Rules that read the chosen set-up.</summary>
    public void Second(CaseFacts facts, NaiveResult result) => AskCandidates(_second, facts, result);

    private void AskCandidates(List<NaiveRule> rules, CaseFacts facts, NaiveResult result)
    {
        for (var i = 0; i < facts.Candidates.Length; i++)
        {
            var asked = Case(facts, i, result);
            foreach (var rule in rules)
                Note(rule, i, _conditions.All(rule.When, asked), result);
        }
    }

    private NaiveCase Case(CaseFacts facts, int candidate, NaiveResult result)
        => new(facts.Athlete, candidate < 0 ? null : facts.Candidates[candidate], f => Find(f, facts, result));

    private Answer Find(string finding, CaseFacts facts, NaiveResult result)
    {
        if (result.Findings.TryGetValue(finding, out var known))
            return known;
        var answer = Answer.No;
        foreach (var rule in _concluding[finding])
        {
            var one = _conditions.All(rule.When, Case(facts, -1, result));
            answer = one > answer ? one : answer;
        }
        return result.Findings[finding] = answer;
    }

    private static void Note(NaiveRule rule, int candidate, Answer answer, NaiveResult result)
    {
        if (answer == Answer.Yes)
            result.Fired.Add((rule.Id, candidate));
        else if (answer == Answer.Unsure)
            result.Open.Add((rule.Id, candidate));
    }

    private NaiveRule Read(YamlMap rule)
    {
        var when = (YamlMap)rule.Find("when")!;
        var names = _conditions.Names(when).ToList();
        return new NaiveRule(
            Text(rule, "rule"),
            when,
            [.. Items(rule.Find("then")).Select(t => t.Find("finding")).OfType<YamlScalar>().Select(s => s.Value).Distinct()],
            names.Exists(n => n.Word.About is WordAbout.Variant or WordAbout.Candidate),
            names.Exists(n => n.Reading == "as set up"));
    }

    private static IEnumerable<YamlMap> Items(YamlNode? node) => node is YamlList list ? list.Items.OfType<YamlMap>() : [];

    private static string Text(YamlMap map, string key) => ((YamlScalar)map.Find(key)!).Value;
}
