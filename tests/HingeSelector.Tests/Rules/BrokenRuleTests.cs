using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rules;

/// <summary>Each broken rule file gives its clear error, as staff see it.</summary>
public sealed class BrokenRuleTests
{
    private const string Folder = "tests/golden/broken-rules";

    private static readonly string[] _shipped = ["criteria.yaml", "sources.yaml", "model.yaml", "assumptions.yaml", "philosophies/balanced.yaml"];

    public static TheoryData<string> Cases { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, Folder), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_broken_rule_file_is_told_apart(string name)
    {
        var bag = new DiagnosticBag();
        RuleBookReader.Read(Base().With("broken/file.yaml", File.ReadAllText(Path.Combine(RepositoryFiles.Root, Folder, name + ".yaml"))), bag);
        bag.HasErrors.ShouldBeTrue();
        Golden.ShouldMatch(DiagnosticPrinter.Print(bag.Sorted), $"broken-rules/{name}.txt");
    }

    [Fact]
    public void The_base_of_the_broken_files_is_sound()
    {
        var bag = new DiagnosticBag();
        RuleBookReader.Read(Base(), bag).ShouldNotBeNull();
        DiagnosticPrinter.Print(bag.Sorted).ShouldBeEmpty();
    }

    [Fact]
    public void Nothing_of_a_faulty_folder_is_loaded()
        => Should.Throw<FaultyFilesException>(() => RuleBookReader.Read(Base().With("broken/file.yaml", "rules: nothing")));

    [Theory]
    [InlineData("{profession: surgeon, may clear: any}, {profession: surgeon, may clear: none}", "HS1006")]
    [InlineData("{profession: surgeon, may clear: [hernias]}", "HS2002")]
    [InlineData("{profession: surgeon}", "HS1011")]
    public void Professions_are_a_closed_list(string professions, string id)
    {
        var bag = new DiagnosticBag();
        RuleBookReader.Read(Base().With("vocabulary.yaml", Base().Texts["vocabulary.yaml"] + $"clearance-professions: [{professions}]\n"), bag);
        bag.Sorted.ShouldHaveSingleItem().Id.ShouldBe(id);
    }

    private static RuleFiles Base()
    {
        var own = RuleFiles.FromFolder(Path.Combine(RepositoryFiles.Root, Folder, "base"));
        var texts = own.Texts.ToDictionary(t => t.Key == "good.yaml" ? "good/good.yaml" : t.Key, t => t.Value, StringComparer.Ordinal);
        foreach (var path in _shipped)
            texts[path] = RepositoryFiles.Rules.Texts[path];
        return new RuleFiles(texts);
    }
}
