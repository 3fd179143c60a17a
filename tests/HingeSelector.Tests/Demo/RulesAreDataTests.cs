using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Demo;

/// <summary>Staff change the answer by changing a file; nothing is built.</summary>
public sealed class RulesAreDataTests
{
    private const string Criteria = "criteria.yaml";

    [Fact]
    public void A_weight_changes_the_score_by_exactly_its_points()
    {
        var before = OneAthlete.Ask();
        var text = RepositoryFiles.Rules.Texts[Criteria].Replace("criterion: fit, weight: 3", "criterion: fit, weight: 4", StringComparison.Ordinal);
        var after = OneAthlete.AskBy(RuleBookReader.Read(RepositoryFiles.Rules.With(Criteria, text)), "content/demo/room.yaml", null);
        foreach (var candidate in after.Ranked)
            candidate.Score.ShouldBe(before.Ranked(candidate.Candidate.Variant.Id).Score + after.Points(candidate.Candidate.Variant.Id, "fit"));
    }

    [Fact]
    public void A_model_number_changes_the_posture()
    {
        var text = RepositoryFiles.Rules.Texts["model.yaml"].Replace("default: 20 deg\n    range: 10 deg to 30 deg", "default: 12 deg\n    range: 10 deg to 30 deg", StringComparison.Ordinal);
        text.ShouldNotBe(RepositoryFiles.Rules.Texts["model.yaml"]);
        var after = OneAthlete.AskBy(RuleBookReader.Read(RepositoryFiles.Rules.With("model.yaml", text)), "content/demo/room.yaml", null);
        // Eight degrees less from the low back are eight degrees more asked of the hips.
        after.HipSpare("conventional").ShouldBe(OneAthlete.Ask().HipSpare("conventional") - 8, 1e-6);
    }

    [Fact]
    public void A_new_fact_and_a_new_rule_count_at_once()
    {
        var vocabulary = RepositoryFiles.Rules.Texts["vocabulary.yaml"].Replace(
            "facts:\n",
            "facts:\n  - {fact: calf-cramp, label: Calf cramp, about: day, kind: yes-no, lifetime: today, protocol: pain}\n",
            StringComparison.Ordinal);
        const string rule = """
            rules:
              - rule: calf-cramp-no-wide-stance
                when:
                  stance: is wide
                  calf-cramp: is yes
                then:
                  - exclude: A cramping calf and a wide stance do not go together today.
                because: An invented rule for this test.
                grade: practice
            """;
        var book = RuleBookReader.Read(RepositoryFiles.Rules.With("vocabulary.yaml", vocabulary).With("local/cramp.yaml", rule));
        OneAthlete.AskBy(book, "content/demo/room.yaml", null, "calf-cramp: yes").IsOut("sumo").ShouldBeTrue();
        OneAthlete.AskBy(book, "content/demo/room.yaml", null, "calf-cramp: no").IsOut("sumo").ShouldBeFalse();
        OneAthlete.AskBy(book, "content/demo/room.yaml", null).IsOut("sumo").ShouldBeFalse();
    }

    [Fact]
    public void Every_example_inside_a_rule_comes_out_as_its_author_expects()
    {
        var bag = new Diagnostics.DiagnosticBag();
        var results = new Examples.ExampleRunner(RepositoryFiles.Book).RunAll(bag);
        Diagnostics.DiagnosticPrinter.Print(bag.Sorted).ShouldBeEmpty();
        results.Count.ShouldBeGreaterThan(RepositoryFiles.Book.Rules.Count);
        results.ShouldAllBe(r => r.Agrees);
    }
}
