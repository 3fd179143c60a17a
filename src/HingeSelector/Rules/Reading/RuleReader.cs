using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Reading;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads the rules of the topic files and compiles each.</summary>
public sealed class RuleReader
{
    private readonly IReadOnlyDictionary<string, Source> _sources;
    private readonly IReadOnlyDictionary<string, Finding> _findings;
    private readonly DiagnosticBag _bag;
    private readonly ConditionReader _conditions;
    private readonly ConclusionReader _conclusions;
    private readonly ExampleReader _examples;
    private readonly VariantSorter _sorter;

    /// <summary>Prepares to read rules against the given knowledge.</summary>
    public RuleReader(Vocabulary vocabulary, IReadOnlyList<Variant> variants, IReadOnlyDictionary<string, Source> sources, IReadOnlyList<Criterion> criteria, IReadOnlyDictionary<string, Finding> findings, DiagnosticBag bag)
    {
        _sources = sources;
        _findings = findings;
        _bag = bag;
        _sorter = new VariantSorter(vocabulary, variants);
        _examples = new ExampleReader(variants, bag);
        _conditions = new ConditionReader(vocabulary, findings, bag);
        _conclusions = new ConclusionReader(findings, criteria, VariantsThatMeet, bag);
    }

    /// <summary>Reads one item of a <c>rules</c> list.</summary>
    /// <param name="node">The item.</param>
    /// <param name="topic">Folder of its file.</param>
    public Rule? Read(YamlNode node, string topic)
    {
        var map = MapReader.Open(node, "a rule", _bag);
        if (map is null)
            return null;
        var before = _bag.ErrorCount;
        var id = map.Required("rule");
        if (id is not null && !VocabularyReader.PlainId().IsMatch(id.Value))
            _bag.Add(Problems.BadId(id.Span, id.Value));
        var conditions = _conditions.ReadAll(map.Node("when"));
        var conclusions = _conclusions.ReadAll(map.List("then"));
        var because = map.Required("because");
        var grade = Parse.Grade(map.Required("grade"), _bag);
        var disputed = Parse.YesNo(map.Scalar("disputed"), "disputed", _bag);
        var sources = Parse.Sources(map, _sources, _bag);
        if (grade is not (null or Grade.Practice or Grade.Mechanics) && sources.Count == 0)
            _bag.Add(Problems.GradeWithoutSource(map.Span, Parse.Name(grade.Value)));
        var tries = map.List("tries").SelectMany(_examples.Read).ToList();
        map.Finish();
        if (id is null || _bag.ErrorCount != before)
            return null;
        if (conclusions.Count == 0)
            _bag.Add(Problems.NoConclusion(id.Span, id.Value));
        var settled = _sorter.Settle(conditions);
        if (settled.Variants == 0)
            _bag.Add(Problems.NeverHolds(id.Span, id.Value));
        return Check(new Rule
        {
            Id = id.Value,
            Topic = topic,
            Span = id.Span,
            Conditions = conditions,
            OpenConditions = settled.Open,
            Variants = settled.Variants,
            PerCandidate = conditions.Any(c => c.Reads.Any(r => r.Word.OfCandidate)),
            AfterSetUp = conditions.Any(c => c.Reads.Any(r => r.Name == ComputedWords.AsSetUp)),
            Conclusions = conclusions,
            Because = because!.Value,
            Grade = grade!.Value,
            Disputed = disputed,
            Sources = sources,
            Tries = tries,
        });
    }

    private ulong? VariantsThatMeet(YamlNode node)
    {
        var before = _bag.ErrorCount;
        var conditions = _conditions.ReadAll(node);
        if (_bag.ErrorCount != before)
            return null;
        var settled = _sorter.Settle(conditions);
        foreach (var condition in settled.Open)
            _bag.Add(Problems.BadCondition(condition.Span, condition.Text, condition.Text, "conditions on words of the variant only"));
        return settled.Variants;
    }

    private Rule Check(Rule rule)
    {
        var candidateWord = rule.Conditions.SelectMany(c => c.Reads).FirstOrDefault(r => r.Word.OfCandidate);
        foreach (var conclusion in rule.Conclusions)
        {
            if (candidateWord is not null && conclusion is StopConclusion or FindingConclusion && rule.PerCandidate)
                _bag.Add(Problems.WrongScope(rule.Span, conclusion is StopConclusion ? "stop" : "finding", candidateWord!.ToString()));
            if (conclusion is RequestConclusion && rule.AfterSetUp)
                _bag.Add(Problems.RequestReadsResult(rule.Span, rule.Conditions.SelectMany(c => c.Reads).First(r => r.Name == ComputedWords.AsSetUp).Word.Id));
        }
        return rule;
    }
}
