using HingeSelector.Diagnostics;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rules.Philosophies;

/// <summary>Each broken philosophy gives its clear error, as staff see it.</summary>
public sealed class BrokenPhilosophyTests
{
    private const string Folder = "tests/golden/broken-philosophies";

    public static TheoryData<string> Cases { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, Folder), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_broken_philosophy_is_told_apart(string name)
    {
        var bag = new DiagnosticBag();
        RuleBookReader.Read(RepositoryFiles.Rules.With("philosophies/mine.yaml", File.ReadAllText(Path.Combine(RepositoryFiles.Root, Folder, name + ".yaml"))), bag);
        bag.HasErrors.ShouldBeTrue();
        bag.Sorted.ShouldAllBe(d => d.Span.Source!.Path == "rules/philosophies/mine.yaml");
        Golden.ShouldMatch(DiagnosticPrinter.Print(bag.Sorted), $"broken-philosophies/{name}.txt");
    }
}
