using HingeSelector.Analysis;
using HingeSelector.Rules;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Analysis;

/// <summary>Each planted fault is told by its own code and nothing else is; the screens that are shown do what is said of them.</summary>
public sealed class PlantedDefectTests
{
    public static TheoryData<string> Names { get; } = [.. Defects.All.Select(d => d.Name)];

    [Fact]
    public void There_are_at_least_thirty()
        => Defects.All.Select(d => d.Name).Distinct().Count().ShouldBeGreaterThanOrEqualTo(30);

    [Fact]
    public void The_shipped_rules_have_none()
        => FolderCheck.Run(RepositoryFiles.Rules).Found.ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Names))]
    public void A_planted_fault_is_told_by_its_code_and_nothing_else(string name)
    {
        var defect = Defects.All.First(d => d.Name == name);
        var files = defect.Plant(RepositoryFiles.Rules);
        var found = FolderCheck.Run(files).Found;

        found.Select(d => d.Id).Distinct().ShouldBe([defect.Code], Diagnostics.DiagnosticPrinter.Print(found));
        foreach (var shown in found.Where(d => d.Witness is { } w && w.EndsWith("fires", StringComparison.Ordinal)))
            FolderCheck.Run(WithExample(files, shown.Subject!, shown.Witness!)).Found.Select(d => d.Id).Distinct().ShouldBe([defect.Code], shown.Witness);
    }

    [Fact]
    public void A_search_that_is_given_up_is_said_and_nothing_is_made_up()
    {
        var bag = new Diagnostics.DiagnosticBag();
        RuleCheck.Run(RepositoryFiles.Book, RepositoryFiles.Rules, bag, 0);
        bag.Sorted.ShouldHaveSingleItem().Id.ShouldBe("HS3124");

        // With few steps only the long search is given up.
        bag = new Diagnostics.DiagnosticBag();
        RuleCheck.Run(RepositoryFiles.Book, RepositoryFiles.Rules, bag, 12);
        bag.Sorted.Select(d => d.Id).Distinct().ShouldBe(["HS3124"], Diagnostics.DiagnosticPrinter.Print(bag.Sorted));
    }

    // The screen is pasted under the rule as it was printed.
    private static RuleFiles WithExample(RuleFiles files, string rule, string witness)
    {
        var text = files.Texts[Defect.File];
        var place = text.IndexOf("    sources: []\n", text.IndexOf($"- rule: {rule}\n", StringComparison.Ordinal), StringComparison.Ordinal);
        return files.With(Defect.File, text.Insert(place, $"    tries:\n      {witness.Replace("\n", "\n      ", StringComparison.Ordinal)}\n"));
    }
}
