using HingeSelector.Editing;

namespace HingeSelector.Tests.Editing;

public sealed class WholeFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hinge-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public void A_failure_halfway_leaves_every_file_as_it_was()
    {
        File.WriteAllText(Path.Combine(_folder, "a.yaml"), "a");
        // A folder of this name cannot be replaced by a file.
        Directory.CreateDirectory(Path.Combine(_folder, "b.yaml", "inside"));
        var before = new Dictionary<string, string> { ["a.yaml"] = "a", ["b.yaml"] = "b" };

        Should.Throw<Exception>(() => WholeFiles.Replace(_folder, before, new SortedDictionary<string, string> { ["a.yaml"] = "new", ["b.yaml"] = "new" }));

        File.ReadAllText(Path.Combine(_folder, "a.yaml")).ShouldBe("a");
        Directory.GetFiles(_folder).Length.ShouldBe(1);
    }

    [Fact]
    public void A_file_that_exists_is_not_overwritten()
    {
        var path = Path.Combine(_folder, "a.yaml");
        File.WriteAllText(path, "a");

        Should.Throw<IOException>(() => WholeFiles.Create(path, "new"));

        File.ReadAllText(path).ShouldBe("a");
        Directory.GetFiles(_folder).Length.ShouldBe(1);
    }
}
