using HingeSelector.Examples.Proposing;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Tests.Rules.Tries;

public sealed class TriesEditTests
{
    [Fact]
    public void Only_the_lines_of_the_changes_are_added()
    {
        var files = SmallRules.Files("age: below 18 years   # still growing", "# Staff wrote this.\n- given: {age: 15 years}   # a pupil\n  expect: fires\n  # and this\n- given: {age: 30 years}\n  expect: does not fire");
        var before = files.Texts[SmallRules.Path];
        var after = Written(files);
        var added = after.Split('\n').Except(before.Split('\n')).ToList();

        after.Split('\n').Where(l => !added.Contains(l)).ShouldBe(before.Split('\n'));
        added.ShouldBe(["        also with: [age: 17 years]", "        not with: [age: 18 years]", "        open without: [age]"]);
    }

    [Fact]
    public void A_list_that_is_there_grows()
    {
        var files = SmallRules.Files("age: below 18 years", "- given: {age: 15 years}\n  expect: fires\n  also with: [age: 16 years,   # nearly\n    age: 14 years]\n  not with: [age: 30 years]");
        var after = Written(files);

        after.ShouldContain("        also with: [age: 16 years,   # nearly\n          age: 14 years, age: 17 years]\n");
        after.ShouldContain("        not with: [age: 30 years, age: 18 years]\n");
    }

    [Fact]
    public void Long_lists_grow_and_the_other_keys_follow_them()
    {
        var many = string.Join(", ", Enumerable.Range(10, 8).Select(a => $"age: {a} years"));
        var files = SmallRules.Files("age: below 18 years\nsex: is male", $"- given: {{age: 15 years, sex: male}}\n  expect: fires\n  also with: [{many}]\n  not with: [{many.Replace("age: 1", "age: 5", StringComparison.Ordinal)}, age: 77 years]");
        var after = Written(files);

        RuleBookReader.Read(files.With(SmallRules.Path, after)).Rules[0].Tries.Count.ShouldBe(1 + 8 + 9 + Proposals(files).Count);
    }

    [Fact]
    public void An_example_in_brackets_is_left_alone_and_said_so()
    {
        var files = SmallRules.Files("age: below 18 years", "- {given: {age: 15 years}, expect: fires}");
        var proposals = Proposals(files);
        TriesEdit.Apply(files.Texts[SmallRules.Path], proposals, out var skipped).ShouldBe(files.Texts[SmallRules.Path]);
        skipped.Count.ShouldBe(proposals.Count);
    }

    private static string Written(RuleFiles files) => TriesEdit.Apply(files.Texts[SmallRules.Path], Proposals(files), out _);

    private static IReadOnlyList<Proposal> Proposals(RuleFiles files)
    {
        var book = RuleBookReader.Read(files);
        return [.. SmallRules.Cases(book).SelectMany(new Proposer(book).For)];
    }
}
