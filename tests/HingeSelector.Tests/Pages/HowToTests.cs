using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Pages;

/// <summary>Every page under content/how-to/ can be followed to the letter.</summary>
public sealed class HowToTests
{
    private static readonly string _pages = Path.Combine(RepositoryFiles.Root, "content/how-to");

    public static TheoryData<string> Pages => [.. Directory.GetFiles(_pages, "*.md").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_can_be_followed(string page)
    {
        using var walk = new PageWalk(Path.Combine(_pages, page), Golden.Updates);
        walk.Follow();
    }

    [Fact]
    public void The_five_pages_are_there()
        => Directory.GetFiles(_pages, "*.md").Select(f => Path.GetFileName(f))
            .ShouldBe(["add-a-fact.md", "add-a-variant.md", "change-the-model.md", "edit-a-rule.md", "write-a-philosophy.md"], ignoreOrder: true);

    [Fact]
    public void A_page_that_says_something_else_than_the_screen_is_caught()
    {
        var page = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.md");
        File.WriteAllText(page, "```sh\necho one\n```\n\n```text\ntwo\n```\n");
        try
        {
            using var walk = new PageWalk(page, rewrites: false);
            Should.Throw<ShouldAssertException>(walk.Follow).Message.ShouldContain(":5");
        }
        finally
        {
            File.Delete(page);
        }
    }
}
