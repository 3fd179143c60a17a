using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Reading;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rules.Tries;

public sealed class ExampleLanguageTests
{
    private const string When = """
        knee-to-wall, worse: below 9 cm
        footwear: is flat-shoes or barefoot-or-socks
        """;

    private const string Short = "- given: {knee-to-wall: {left: 8 cm, right: 10 cm}, footwear: flat-shoes}\n  ";
    private const string Long = "- given: {knee-to-wall: {left: 12 cm, right: 10 cm}, footwear: flat-shoes}\n  ";

    [Fact]
    public void Changes_stand_below_the_example_that_they_change()
    {
        var results = Run(Short + """
            expect: fires
              also with: ['knee-to-wall, worse': 8.9 cm, footwear: barefoot-or-socks]
              not with: [knee-to-wall: {left: 9 cm, right: 9 cm}, footwear: running-shoes]
              open with: [{'knee-to-wall, worse': not measured, footwear: barefoot-or-socks}]
              open without: [footwear]
            """);

        results.Select(r => r.Example.Expect).ShouldBe([Truth.True, Truth.True, Truth.True, Truth.False, Truth.False, Truth.Open, Truth.Open]);
        results.ShouldAllBe(r => r.Agrees);
        results.Count(r => r.Example.IsChange).ShouldBe(6);
    }

    [Fact]
    public void Another_variant_is_a_change_like_any_other()
    {
        var book = SmallRules.Book("stance: is wide\nhinge-control: is keeps", """
            - given: {hinge-control: keeps}
              for: sumo
              expect: fires
              not for: [conventional, hex-low]
              not with: [{for: conventional, hinge-control: loses}]
            """);
        new ExampleRunner(book).RunAll(new DiagnosticBag()).Select(r => book.Variants[r.Example.Variant!.Value].Id).ShouldBe(["sumo", "conventional", "conventional", "hex-low"]);
    }

    [Fact]
    public void The_named_reason_must_be_the_true_one()
    {
        Faults(Long + "expect: does not fire\n  because: knee-to-wall").ShouldBeEmpty();
        var wrong = Faults(Long + "expect: does not fire\n  because: footwear").ShouldHaveSingleItem();
        wrong.Id.ShouldBe("HS3062");
        wrong.Message.ShouldContain("knee-to-wall, worse: below 9 cm");
    }

    [Fact]
    public void One_of_two_reasons_is_not_the_whole_reason()
    {
        Faults("- given: {}\n  expect: open\n  because: footwear").ShouldHaveSingleItem().Id.ShouldBe("HS3062");
        Faults("- given: {}\n  expect: open\n  because: [footwear, 'knee-to-wall, worse']").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("expect: does not fire\n  not with: [footwear: flat-shoes]", "HS3060")]
    [InlineData("expect: fires\n  because: footwear", "HS3061")]
    [InlineData("expect: fires\n  not with: [footwear]", "HS1009")]
    public void What_makes_no_sense_is_refused(string rest, string id)
    {
        var bag = new DiagnosticBag();
        RuleBookReader.Read(SmallRules.Files(When, Short + rest), bag);
        bag.Sorted.ShouldContain(d => d.Id == id, string.Join(' ', bag.Sorted.Select(d => d.Id)));
    }

    [Fact]
    public void A_failing_example_is_shown_with_value_threshold_and_distance()
    {
        var book = SmallRules.Book(When, Long + "expect: fires");
        var results = new ExampleRunner(book).RunAll(new DiagnosticBag());
        var text = string.Join('\n', new TriesText(book).Rows(results));

        text.ShouldContain("rules/local/one.yaml:13:");
        text.ShouldContain("expected  fires");
        text.ShouldContain("actual    does not fire");
        text.ShouldContain("fails    knee-to-wall, worse: below 9 cm   [knee-to-wall, worse 10 cm, 1 cm above 9 cm]");
    }

    [Fact]
    public void All_words_of_a_group_are_answered_at_once()
    {
        var book = SmallRules.Book("any pain-worst: above 2 points", """
            - given: {all pain-worst: 2 points, knee-pain-worst: {left: 3 points, right: 0 points}}
              expect: fires
              not with: [all pain-worst: 2 points]
            """);
        new ExampleRunner(book).RunAll(new DiagnosticBag()).ShouldAllBe(r => r.Agrees);
    }

    [Fact]
    public void A_change_means_what_the_whole_example_would_mean()
    {
        var book = RepositoryFiles.Book;
        var bag = new DiagnosticBag();
        var builder = new CaseBuilder(book, bag);
        var changes = book.Rules.SelectMany(r => r.Tries.Where(t => t.IsChange).Select(t => (Rule: r, Change: t))).ToList();
        foreach (var (rule, change) in changes)
        {
            var whole = change with { Given = Merged(change), Changes = null };
            builder.Build(rule, whole)!.Found.ShouldBe(change.Expect, $"{rule.Id} {change.At.Span}");
        }
        bag.Sorted.ShouldBeEmpty();
    }

    // A change to a word takes away what was said of its readings, and "all" is said of every word.
    private static YamlMap Merged(RuleExample change)
    {
        var changed = change.Changes!.Entries.Select(e => e.Key.Value).ToHashSet(StringComparer.Ordinal);
        bool Stays(string key) => !changed.Contains(key) && !changed.Contains(key.Split(',')[0]) && !changed.Any(c => c.StartsWith("all ", StringComparison.Ordinal) && IsOfGroup(key, c[4..]));
        return new YamlMap([.. change.Given.Entries.Where(e => Stays(e.Key.Value)), .. change.Changes.Entries], change.Given.Span);
    }

    private static bool IsOfGroup(string key, string group) => RepositoryFiles.Book.Vocabulary.InGroup(group).Any(w => w.Id == key.Split(',')[0]);

    private static IReadOnlyList<ExampleResult> Run(string tries) => new ExampleRunner(SmallRules.Book(When, tries)).RunAll(new DiagnosticBag());

    private static IReadOnlyList<Diagnostic> Faults(string tries)
    {
        var bag = new DiagnosticBag();
        new ExampleRunner(SmallRules.Book(When, tries)).RunAll(bag);
        return bag.Sorted;
    }
}
