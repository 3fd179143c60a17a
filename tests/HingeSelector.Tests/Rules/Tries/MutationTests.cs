using HingeSelector.Examples.Covering;
using HingeSelector.Examples.Mutating;
using HingeSelector.Examples.Proposing;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Tests.Rules.Tries;

public sealed class MutationTests
{
    private const string Below = "knee-to-wall, worse: below 9 cm";
    private const string Fires = "- given: {knee-to-wall: {left: 5 cm, right: 10 cm}}\n  expect: fires\n";

    [Fact]
    public void A_moved_threshold_that_no_example_notices_is_listed()
        => Survivors(Below, Fires).ShouldBe(["below 8.9 cm", "below 9.1 cm", "at most 9 cm", "(left out)"]);

    [Fact]
    public void Both_sides_of_the_threshold_kill_them_all()
        => Survivors(Below, Fires + "  also with: ['knee-to-wall, worse': 8.9 cm]\n  not with: ['knee-to-wall, worse': 9 cm]").ShouldBeEmpty();

    [Fact]
    public void One_side_leaves_the_mutants_of_the_other()
        => Survivors(Below, Fires + "  not with: ['knee-to-wall, worse': 9 cm]").ShouldBe(["below 8.9 cm"]);

    [Theory]
    [InlineData("at most 10 points", "at most 11 points")]
    [InlineData("at least 0 points", "at least -1 points")]
    public void What_lies_outside_the_range_is_not_counted(string demand, string outside)
    {
        var report = Report($"soreness-after-throwing: {demand}", "- given: {soreness-after-throwing: 5 points}\n  expect: fires\n");
        report.Equivalent.ShouldBe(1);
        report.Survivors.ShouldNotContain(m => m.Mutation.Says == outside);
    }

    [Fact]
    public void A_condition_that_another_one_implies_can_be_left_out_and_is_not_counted()
        => Report("age: at least 14 years\nnone of:\n  - age: below 10 years", "- given: {age: 20 years}\n  expect: fires\n").Survivors
            .ShouldNotContain(m => m.Mutation.Kind == MutationKind.Dropped && m.Mutation.At.Text.StartsWith("none of", StringComparison.Ordinal));

    [Fact]
    public void Variants_that_no_word_tells_apart_make_no_mutant()
    {
        // Every variant with a wide stance is pulled from the floor, or not: what the catalogue says decides, not the words.
        var report = Report("stance: is wide\nvariant: is sumo", "- given: {}\n  for: sumo\n  expect: fires\n");
        report.Survivors.ShouldNotContain(m => m.Mutation.At.Text == "stance: is wide" && m.Mutation.Kind == MutationKind.Dropped);
    }

    [Fact]
    public void Every_kind_of_change_is_made()
    {
        var book = SmallRules.Book(
            "age: from 14 to 17 years\nany of:\n  - hinge-control: is keeps or unsure\n    footwear: is flat-shoes\n  - wrist-pain-worst, worse or elbow-pain-worst, worse: above 2 points\nnone of:\n  - history: includes hernia",
            "- given: {age: 15 years, hinge-control: keeps, footwear: flat-shoes, history: []}\n  expect: fires\n");
        var says = new MutantMaker(book).Of(book.Rules[0]).Select(m => $"{m.Mutation.At.Text} > {m.Mutation.Says}").ToList();

        says.ShouldContain("age: from 14 to 17 years > from 13 years to 17 years");
        says.ShouldContain("age: from 14 to 17 years > between 14 years and 17 years");
        says.ShouldContain("age: from 14 to 17 years > below 14 years or above 17 years");
        says.ShouldContain("age: from 14 to 17 years > (left out)");
        says.ShouldContain("hinge-control: is keeps or unsure > is keeps");
        says.ShouldContain("hinge-control: is keeps or unsure > is unsure or loses");
        says.ShouldContain("hinge-control: is keeps or unsure > is not keeps or unsure");
        says.ShouldContain("footwear: is flat-shoes > (left out)");
        says.ShouldContain("wrist-pain-worst, worse: above 2 points > (word left out)");
        says.ShouldContain("wrist-pain-worst, worse or elbow-pain-worst, worse: above 2 points > above 3 points");
        says.ShouldContain("none of history: includes hernia > any of instead of none of");
        says.ShouldBeUnique();
    }

    [Theory]
    [InlineData(Below, "knee-to-wall: {left: 5 cm, right: 10 cm}", null)]
    [InlineData("age: from 14 to 17 years\nsex: is male", "age: 15 years, sex: male", null)]
    [InlineData("any pain-worst: above 2 points", "knee-pain-worst: {left: 4 points, right: 0 points}", null)]
    [InlineData("wrist-pain-worst, worse or elbow-pain-worst, worse: above 2 points", "wrist-pain-worst: {left: 4 points, right: 0 points}", null)]
    [InlineData("history: includes hernia or eye-operation\nthrows-hard: is not rarely", "history: [hernia], throws-hard: on-call", null)]
    [InlineData("none of:\n  - history: includes hernia\n  - age: below 18 years", "history: [], age: 30 years", null)]
    [InlineData("any of:\n  - age: below 18 years\n    sex: is male\n  - hinge-control: is loses\n    footwear: is spikes", "age: 15 years, sex: male", null)]
    [InlineData("hip-spare, as set up: between 5 and 15 deg\nstance: is wide or medium", "'hip-spare, as set up': 9 deg", "sumo")]
    [InlineData("any of:\n  - {held-height-variant: is conventional, variant: is conventional}\n  - {held-height-variant: is sumo, variant: is sumo}\nheld-height: above 27.5 cm", "held-height-variant: conventional, held-height: 30 cm", "conventional")]
    public void The_proposed_examples_show_everything_and_leave_no_survivor(string when, string given, string? variant)
    {
        var files = SmallRules.Files(when, $"- given: {{{given}}}\n{(variant is null ? "" : $"  for: {variant}\n")}  expect: fires\n");
        var book = RuleBookReader.Read(files);
        var proposals = SmallRules.Cases(book).SelectMany(new Proposer(book).For).ToList();
        var text = TriesEdit.Apply(files.Texts[SmallRules.Path], proposals, out var skipped);
        var after = RuleBookReader.Read(files.With(SmallRules.Path, text));

        skipped.ShouldBeEmpty();
        var cases = SmallRules.Cases(after);
        CoverageReport.Of(after, cases).Missing.Select(m => $"{m.Line.Condition.Text}: {m.Says}").ShouldBeEmpty(text);
        MutationReport.Of(after, cases).Survivors.Select(m => $"{m.Mutation.At.Text} as {m.Mutation.Says}").ShouldBeEmpty(text);
        new Proposer(after).For(cases[0]).ShouldBeEmpty();
    }

    [Fact]
    public void Points_and_stop_levels_are_counted_apart()
    {
        var files = SmallRules.Files(Below, Fires);
        var book = RuleBookReader.Read(files.With(SmallRules.Path, files.Texts[SmallRules.Path].Replace("caution: Nothing but a test.", "points: +3 for fit", StringComparison.Ordinal)));
        // Two, minus three, the next criterion; four would be too many.
        MutationReport.Of(book, SmallRules.Cases(book)).Conclusions.ShouldBe(3);
    }

    private static MutationReport Report(string when, string tries)
    {
        var book = SmallRules.Book(when, tries);
        return MutationReport.Of(book, SmallRules.Cases(book));
    }

    private static IReadOnlyList<string> Survivors(string when, string tries) => [.. Report(when, tries).Survivors.Select(m => m.Mutation.Says)];
}
