using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Rules.Firing.Agreement;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Firing;

public sealed class NetworkTests
{
    private readonly Network _network = new(RulesFolder.Book(EveryOperator.Files));

    [Fact]
    public void Nothing_known_proves_nothing_absent()
    {
        var evaluation = _network.Start(Blank()).First();
        evaluation.Findings.ShouldAllBe(f => f == Truth.Open);
        evaluation.Fired.Where(f => f.Candidate < 0).ShouldBeEmpty();
    }

    [Fact]
    public void A_finding_is_absent_only_when_every_rule_for_it_is_refuted()
    {
        var facts = Blank();
        Set(facts, "straight-leg-raise", FactValue.Number(80));
        Finding(facts, "short-behind").ShouldBe(Truth.Open);
        Set(facts, "hip-flexion", FactValue.Number(120));
        Finding(facts, "short-behind").ShouldBe(Truth.False);
    }

    [Fact]
    public void Findings_in_more_than_one_supported_way_fire_their_readers_once()
    {
        var facts = Blank();
        Set(facts, "straight-leg-raise", FactValue.Number(50));
        Set(facts, "hip-flexion", FactValue.Number(90));
        Set(facts, "grip-strength", FactValue.Number(30));
        Set(facts, "sex", FactValue.Choice(1));
        Set(facts, "age", FactValue.Number(20 * 24 * 365.25));
        var session = _network.Start(facts);
        var fired = session.First().Fired;
        fired.ShouldBe(fired.Distinct());
        fired.Count(f => _network.Book.Rules[f.Rule].Id == "finds-either-trouble").ShouldBe(1);
    }

    [Fact]
    public void The_trace_numbers_every_conclusion_in_the_order_of_firing()
    {
        var facts = new RandomCases(_network.Book).First(0);
        var session = _network.Start(facts);
        var evaluation = session.First();
        session.Second();
        session.Trace.Select(t => t.Sequence).ShouldBe(Enumerable.Range(0, session.Trace.Count));
        session.Trace.Select(t => (t.Rule, t.Candidate)).Order().ShouldBe(evaluation.Fired.Select(f => (f.Rule, f.Candidate)).Order());
    }

    [Fact]
    public void Each_stage_runs_once_and_in_order()
    {
        var session = _network.Start(Blank());
        Should.Throw<InvalidOperationException>(session.Second);
        session.First();
        Should.Throw<InvalidOperationException>(() => session.First());
        session.Second();
        Should.Throw<InvalidOperationException>(session.Second);
    }

    [Fact]
    public void Tables_of_another_vocabulary_are_refused()
        => Should.Throw<ArgumentException>(() => _network.Start(new CaseFacts([], [])));

    [Fact]
    public void Rules_that_do_not_come_to_rest_are_reported()
    {
        var network = new Network(_network.Book) { MostFirings = 3 };
        Should.Throw<NetworkException>(() => network.Start(new RandomCases(network.Book).First(0)).First()).Message.ShouldContain("3 firings");
    }

    [Fact]
    public void Two_definitions_of_one_name_are_refused()
    {
        var definitions = Definitions.Of(_network.Book);
        Should.Throw<NetworkException>(() => new Network(_network.Book, [.. definitions, definitions[0]])).Message.ShouldContain(definitions[0].Name);
    }

    // Bytes do not depend on how busy the machine is, so they can be guarded here; times are measured by the benchmarks.
    [Fact]
    public void A_decision_over_the_shipped_rules_leaves_less_than_a_megabyte_and_a_half_of_garbage()
    {
        var network = new Network(RulesFolder.Book(RulesFolder.Shipped));
        var facts = new RandomCases(network.Book).First(0);
        Decide(network, facts);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Decide(network, facts);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(1_500_000);
    }

    [Fact]
    public void A_rule_about_the_variant_alone_concludes_for_exactly_the_variants_that_meet_it()
    {
        var rule = _network.Book.Rules.Single(r => r.Id == "all-that-permit-height");
        var fired = _network.Start(Blank()).First().Fired.Where(f => f.Rule == rule.Index).Select(f => f.Candidate);
        fired.ShouldBe(Enumerable.Range(0, _network.Book.Variants.Count).Where(v => (rule.Variants >> v & 1) == 1));
    }

    private static void Decide(Network network, CaseFacts facts)
    {
        var session = network.Start(facts);
        session.First();
        session.Second();
    }

    [Fact]
    public async Task One_network_serves_many_threads()
    {
        var cases = new RandomCases(_network.Book);
        var expected = Enumerable.Range(0, 40).Select(seed => Fired(cases, seed)).ToList();
        var again = await Task.WhenAll(Enumerable.Range(0, 40).Select(seed => Task.Run(() => Fired(new RandomCases(_network.Book), seed), TestContext.Current.CancellationToken)));
        again.ShouldBe(expected);
    }

    private string Fired(RandomCases cases, int seed) => string.Join(' ', _network.Start(cases.First(seed)).First().Fired);

    private Truth Finding(CaseFacts facts, string id)
        => _network.Start(facts).First().Findings[_network.Book.Findings.Single(f => f.Id == id).Index];

    private CaseFacts Blank()
    {
        var book = _network.Book;
        return new CaseFacts(new FactValue[book.Vocabulary.AthleteSlots], [.. book.Variants.Select(_ => new FactValue[book.Vocabulary.CandidateSlots])]);
    }

    private void Set(CaseFacts facts, string id, FactValue value)
    {
        var word = _network.Book.Vocabulary[id];
        facts.Athlete[word.Slot] = value;
        if (!word.Sided)
            return;
        facts.Athlete[word.Slot + Sides.Right] = value;
        SidedValues.Fill(facts.Athlete, word, 0);
    }
}
