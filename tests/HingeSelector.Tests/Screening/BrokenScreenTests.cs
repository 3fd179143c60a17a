using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Screening;

/// <summary>Every kind of broken screen, roster, room and standing file, with what its author gets to read.</summary>
/// <remarks>
/// A case is a folder in tests/golden/broken-screens with the file and expected.txt. After a wanted change run the tests
/// once with HINGE_UPDATE_GOLDEN=1: it rewrites every expected.txt. Then read each change as a coach would.
/// </remarks>
public sealed class BrokenScreenTests
{
    private static readonly string _folder = Path.Combine(RepositoryFiles.Root, "tests", "golden", "broken-screens");

    public static TheoryData<string> Cases => [.. Directory.GetDirectories(_folder).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_broken_file_says_what_is_wrong_and_how_to_mend_it(string name)
        => Golden.ShouldMatch(Print(Path.Combine(_folder, name)), $"broken-screens/{name}/expected.txt");

    [Fact]
    public void There_are_at_least_forty_kinds()
        => Cases.Count.ShouldBeGreaterThanOrEqualTo(40);

    private static string Print(string folder)
    {
        var path = Directory.GetFiles(folder).Single(f => Path.GetFileName(f) != "expected.txt");
        var source = new SourceText(Path.GetFileName(path), File.ReadAllText(path));
        var bag = new DiagnosticBag();
        switch (source.Path)
        {
            case "screen.yaml":
                Refused(ScreenReader.Read(source, Repository.Vocabulary, Repository.DemoDay, bag), bag);
                break;
            case "roster.csv":
                RosterReader.Read(source, Repository.Vocabulary, Repository.DemoDay, bag);
                break;
            case "room.yaml":
                Refused(RoomReader.Read(source, bag), bag);
                break;
            default:
                Refused(StandingReader.Read(source, Repository.VariantIds, Repository.DemoDay, bag), bag);
                break;
        }
        return DiagnosticPrinter.Print(bag.Sorted);
    }

    private static void Refused(object? read, DiagnosticBag bag)
        => (read is null).ShouldBe(bag.HasErrors, "a file with an error is never half loaded, a file with warnings is");
}
