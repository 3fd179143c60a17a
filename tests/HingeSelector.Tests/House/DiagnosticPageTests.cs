using System.Text.RegularExpressions;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.House;

/// <summary>Every diagnostic has its page and every page its diagnostic.</summary>
public sealed partial class DiagnosticPageTests
{
    private static readonly string _pages = Path.Combine(RepositoryFiles.Root, "content", "diagnostics");

    private static readonly string _register = string.Concat(Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src/HingeSelector/Diagnostics"), "Problems*.cs").Order(StringComparer.Ordinal).Select(File.ReadAllText));

    [Fact]
    public void Register_and_pages_hold_the_same_ids()
        => Directory.EnumerateFiles(_pages).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal).ShouldBe(Ids().Select(i => i.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void No_id_stands_twice_in_the_register()
        => Ids().GroupBy(i => i.Id).Where(g => g.Count() > 1).ShouldBeEmpty();

    [Fact]
    public void Every_page_says_what_it_means_shows_an_example_and_how_to_mend_it()
    {
        foreach (var (id, severity) in Ids())
        {
            var page = File.ReadAllText(Path.Combine(_pages, id + ".md"));
            page.ShouldStartWith($"# {id}: ");
            page.ShouldContain($"\n{severity}", customMessage: id);
            foreach (var part in new[] { "**What it means.**", "**Example.**", "**How to mend it.**" })
                page.ShouldContain(part, customMessage: id);
        }
    }

    private static IEnumerable<(string Id, string Severity)> Ids() => Register().Matches(_register).Select(m => (m.Groups["id"].Value, m.Groups["severity"].Value)).Distinct();

    [GeneratedRegex(@"(?<severity>Error|Warning)\(""(?<id>HS\d{4})""", RegexOptions.CultureInvariant)]
    private static partial Regex Register();
}
