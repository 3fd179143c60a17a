using System.Globalization;
using System.Text.RegularExpressions;
using HingeSelector.Rules;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rules.Philosophies;

/// <summary>The page of a philosophy says exactly what its file changes.</summary>
public sealed partial class PhilosophyPageTests
{
    private static readonly RuleBook _book = RepositoryFiles.Book;

    public static TheoryData<string> Ids { get; } = [.. _book.Philosophies.Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void There_is_a_page_for_every_philosophy_and_none_beside()
        => Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "content/philosophies"), "*.md").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)
            .ShouldBe(_book.Philosophies.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_page_lists_the_weights_and_rules_that_the_file_changes(string id)
    {
        var page = File.ReadAllText(Path.Combine(RepositoryFiles.Root, "content/philosophies", id + ".md"));
        var philosophy = _book.Philosophies[id];
        var rows = Row().Matches(page).Select(m => (m.Groups[1].Value, m.Groups[2].Value, m.Groups[3].Value)).ToList();
        var weights = rows.Where(r => _book.Criteria.Any(c => c.Id == r.Item1)).ToList();
        weights.ShouldBe(philosophy.Changes.Select(c => (_book.Criteria[c.Criterion].Id, Number(c.Before), Number(c.After))));
        var rules = rows.Where(r => r.Item1.Contains('-', StringComparison.Ordinal)).Except(weights).Select(r => (r.Item1, r.Item2)).ToList();
        rules.ShouldBe((_book.Overlays.GetValueOrDefault(id)?.Changes ?? []).Select(c => (c.Rule, c.What)));
        foreach (var part in new[] { "## What it stands for", "## For whom", "## What it changes", "## Where the evidence is thin" })
            page.ShouldContain(part);
    }

    [Fact]
    public void The_page_of_the_base_names_its_weights()
    {
        var page = File.ReadAllText(Path.Combine(RepositoryFiles.Root, "content/philosophies/balanced.md"));
        _book.Criteria.Where(c => c.Weight == 3).Select(c => c.Id).ShouldBe(["fit"]);
        page.ShouldContain("(fit weighs 3)");
        _book.Criteria.Where(c => c.Weight == 2).Select(c => c.Id).ShouldBe(["what-gives-first", "arm-and-shoulder-position", "overload-match", "carry-over", "skill"]);
        _book.Criteria.Where(c => c.Weight == 1).Select(c => c.Id).ShouldBe(["limiting-muscles", "grip-and-straps", "room"]);
        _book.Philosophies["balanced"].Changes.ShouldBeEmpty();
        _book.Philosophies["balanced"].ChangesRules.ShouldBeFalse();
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\| (\S+) \| (.+?) \| (.+?) \|$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Row();
}
