using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Tests.Rules.Philosophies.Sealing;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rules.Philosophies;

/// <summary>A philosophy may be stricter than the base, never looser. The long run is the benchmark <c>sealed</c>.</summary>
public sealed class SealedTests
{
    private static readonly RuleBook _book = RepositoryFiles.Book;
    private static readonly SealedRules _seals = SealedRules.Of(_book.Vocabulary, _book.Rules);

    [Fact]
    public void Nothing_sealed_goes_missing_under_random_philosophies()
    {
        var overlays = new RandomOverlays(_book, 500, 1);
        var watch = new SealWatch(_book, overlays.Seals);
        var random = new Random(2);
        var read = 0;
        for (var i = 0; i < 60; i++)
        {
            if (overlays.Next(random) is not { } overlay)
                continue;
            read++;
            watch.Missing(overlay, i * 1000, 25).ShouldBeNull();
        }
        // A test in which nothing was tried would pass as well.
        read.ShouldBeGreaterThan(25);
        overlays.Accepted.ShouldBeGreaterThan(100);
        foreach (var refusal in new[] { "HS3603", "HS3606", "HS3607" })
            overlays.Refused.ShouldContainKey(refusal);
        watch.Held.ShouldBeGreaterThan(10_000);
        watch.Stricter.ShouldBeGreaterThan(100);
    }

    [Fact]
    public void Every_stop_and_every_caution_is_sealed_and_points_alone_are_not()
    {
        foreach (var rule in _book.Rules)
        {
            var hard = rule.Conclusions.Any(c => c is StopConclusion or CautionConclusion) || rule.Topic is "stops" or "exclusions" or "cautions";
            var free = rule.Conclusions.All(c => c is PointsConclusion);
            if (hard || free)
                (_seals.Why(rule) is not null).ShouldBe(hard, rule.Id);
        }
    }

    [Fact]
    public void Limits_of_youth_pain_and_clearance_are_sealed_wherever_they_stand()
    {
        foreach (var id in new[] { "no-straps-under-sixteen", "no-test-of-the-best-single-today" })
            _seals.Why(Rule(id)).ShouldNotBeNull(id);
    }

    [Fact]
    public void What_a_sealed_rule_reads_at_second_hand_is_sealed()
    {
        foreach (var rule in _book.Rules.Where(r => _seals.Why(r) is not null))
        {
            foreach (var finding in rule.Conditions.SelectMany(c => c.Findings).Select(f => f.Finding))
                _book.RulesOfFinding[finding].ShouldAllBe(i => _seals.Why(_book.Rules[i]) != null, rule.Id);
        }
    }

    [Theory]
    [InlineData("a stop is left out")]
    [InlineData("a caution holds less often")]
    [InlineData("a finding that a sealed rule wants absent is added to")]
    [InlineData("a rule behind a sealed finding is left out")]
    [InlineData("a request moves the set-up")]
    public void The_proof_finds_a_loosening_however_it_came_about(string planted)
    {
        var bag = new DiagnosticBag();
        SealProof.Run(_book, _seals, Planted(planted), bag);
        bag.Sorted.ShouldContain(d => d.Id == "HS3611", planted);
    }

    [Theory]
    [InlineData("a stop is left out")]
    [InlineData("a caution holds less often")]
    [InlineData("a finding that a sealed rule wants absent is added to")]
    [InlineData("a rule behind a sealed finding is left out")]
    public void The_watch_finds_a_loosening_on_some_screen(string planted)
        => new SealWatch(_book, _seals).Missing(Planted(planted), 0, 400).ShouldNotBeNull(planted);

    [Fact]
    public void The_shipped_philosophies_prove_sealed()
    {
        _book.Overlays.Count.ShouldBe(2);
        foreach (var overlay in _book.Overlays.Values)
        {
            var bag = new DiagnosticBag();
            SealProof.Run(_book, _seals, overlay, bag);
            bag.Sorted.ShouldBeEmpty();
            new SealWatch(_book, _seals).Missing(overlay, 7, 100).ShouldBeNull();
        }
    }

    private static Rule Rule(string id) => _book.Rules.Single(r => r.Id == id);

    // Laid together by hand, past the reader that would refuse them.
    private static Overlay Planted(string planted)
    {
        var rules = _book.Rules.ToList();
        var always = Rule("hips-for-those-who-throw-from-the-trunk") with { Conditions = [], OpenConditions = [], PerCandidate = false, AfterSetUp = false, Variants = ulong.MaxValue };
        switch (planted)
        {
            case "a stop is left out":
                rules.RemoveAll(r => r.Id == "emergency-chest-pain-fainting-or-breathless");
                break;
            case "a caution holds less often":
                var caution = rules.FindIndex(r => r.Topic == "cautions" && r.OpenConditions.Count == 1 && r.Conclusions.Any(c => c is CautionConclusion));
                rules[caution] = rules[caution] with { OpenConditions = [.. rules[caution].OpenConditions, .. Rule("emergency-chest-pain-fainting-or-breathless").OpenConditions] };
                break;
            case "a finding that a sealed rule wants absent is added to":
                var reader = _book.Rules.First(r => r.Conclusions.Any(c => c is CautionConclusion or ExclusionConclusion or StopConclusion) && _seals.Why(r) is not null && r.Conditions.SelectMany(c => c.Findings).Any(f => !f.Present));
                var cleared = _book.Findings[reader.Conditions.SelectMany(c => c.Findings).First(f => !f.Present).Finding];
                rules.Add(always with { Id = "planted", Conclusions = [new FindingConclusion(cleared.Index)] });
                break;
            case "a rule behind a sealed finding is left out":
                var wanted = _book.Findings.First(f => _seals.HeldUpBy(f.Index) is not null && _book.RulesOfFinding[f.Index].Count == 1);
                rules.RemoveAll(r => r.Id == _book.Rules[_book.RulesOfFinding[wanted.Index][0]].Id);
                break;
            default:
                rules.Add(always with { Id = "planted", Conclusions = [new RequestConclusion(new RequestedChange("bar-height", null, 0.4))] });
                break;
        }
        List<Rule> ordered = [.. rules.OrderBy(r => r.Id, StringComparer.Ordinal).Select((r, i) => r with { Index = i })];
        return new Overlay(_book.Philosophies["balanced"], [], ordered, [], FindingGraph.Order(_book.Findings, ordered, new DiagnosticBag()), FindingGraph.RulesOf(_book.Findings, ordered));
    }
}
