using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>Fills the fact tables of examples. What a rule does not read is not worked out: most examples need neither findings nor postures.</summary>
internal sealed class CaseBuilder
{
    /// <summary>The day of every example; examples give no dates.</summary>
    private static readonly DateOnly _day = new(2026, 1, 1);

    private static readonly FactValue[] _none = [];

    private readonly RuleBook _book;
    private readonly LoopEvaluator _loop;
    private readonly Selector _selector;
    private readonly ExamplePostures _postures;
    private readonly DiagnosticBag _bag;
    private readonly GivenReader _reader;
    private YamlMap? _lastMap;
    private GivenFacts? _lastGiven;
    private FactValue[] _lastFacts = [];

    /// <summary>Prepares to fill the tables of examples of a book.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="bag">Collects faults in the given facts.</param>
    public CaseBuilder(RuleBook book, DiagnosticBag bag)
    {
        _book = book;
        _bag = bag;
        _loop = new LoopEvaluator(book);
        _selector = new Selector(book, _loop);
        _postures = new ExamplePostures(book);
        _reader = new GivenReader(book, _day, bag);
    }

    /// <summary>Fills the tables of one example.</summary>
    /// <returns>The case, or null when the given facts are faulty (the bag says which).</returns>
    public ExampleCase? Build(Rule rule, RuleExample example)
    {
        if (rule.PerCandidate && example.Variant is null)
        {
            _bag.Add(Problems.MissingKey(example.At.Span, "for", "an example of a rule about candidates"));
            return null;
        }
        var (given, facts) = Facts(example);
        if (given is null)
            return null;
        var needsPosture = rule.PerCandidate && NeedsPosture(rule, given);
        var findings = needsPosture || rule.Conditions.Any(c => c.Findings.Any()) ? _loop.FindingsOf(new CaseFacts(facts, [])) : new Truth[_book.Findings.Count];
        given.WriteFindings(findings);
        if (!rule.PerCandidate)
            return new ExampleCase(rule, example, facts, _none, findings);
        var variant = _book.Variants[example.Variant!.Value];
        var candidate = needsPosture ? _postures.Table(variant, facts, findings) : Candidates.CandidateTable.Bare(_book.Vocabulary, variant, facts, null, null);
        given.WriteCandidate(candidate);
        return new ExampleCase(rule, example, facts, candidate, findings);
    }

    // Changes follow the example that they change, so its facts are read once.
    private (GivenFacts? Given, FactValue[] Facts) Facts(RuleExample example)
    {
        if (!ReferenceEquals(_lastMap, example.Given))
        {
            _lastMap = example.Given;
            _lastGiven = _reader.Read(example.Given);
            _lastFacts = _lastGiven is null ? [] : Table(_lastGiven);
        }
        if (_lastGiven is null || example.Changes is not { Entries.Count: > 0 } changed)
            return (_lastGiven, (FactValue[])_lastFacts.Clone());
        if (_reader.Read(changed) is not { } changes)
            return (null, []);
        var given = _lastGiven.With(changes);
        if (changes.Words.Count > 0)
            return (given, Table(given));
        var facts = (FactValue[])_lastFacts.Clone();
        given.WriteAthlete(facts);
        return (given, facts);
    }

    private FactValue[] Table(GivenFacts given)
    {
        var athlete = new AthleteRecord { Id = "example", Answers = given.Answers, Clearances = given.Clearances, HeldHeights = given.HeldHeights };
        var facts = _selector.GatherFacts(athlete, new Question(athlete, null, null, _book.Philosophies.Values.First(), _day));
        given.WriteAthlete(facts);
        return facts;
    }

    private static bool NeedsPosture(Rule rule, GivenFacts given)
        => rule.OpenConditions.SelectMany(c => c.Reads).Any(r => r.Word is { About: WordAbout.Candidate, Readings.Count: > 0 } && !given.Readings.Any(g => g.Reading == r));
}
