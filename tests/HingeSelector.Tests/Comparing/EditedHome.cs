using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Comparing;

/// <summary>Two copies of the shipped rules, <c>before</c> and <c>after</c>, in a folder of their own; the second is to be edited.</summary>
internal sealed class EditedHome : IDisposable
{
    public EditedHome()
    {
        Folder = Directory.CreateTempSubdirectory("hinge-").FullName;
        foreach (var (path, text) in RepositoryFiles.Rules.Texts)
        {
            Save(Path.Combine(Folder, "before", "rules", path), text);
            Write(path, text);
        }
    }

    public string Folder { get; }

    /// <summary>Replaces one text in one file; it must stand there exactly once.</summary>
    public EditedHome Edit(string path, string old, string with)
    {
        var text = File.ReadAllText(Full(path));
        (text.Split(old).Length - 1).ShouldBe(1, $"'{old}' in {path}");
        Write(path, text.Replace(old, with, StringComparison.Ordinal));
        return this;
    }

    /// <summary>Takes a rule out of its file.</summary>
    public EditedHome Remove(string path, string rule)
    {
        var parts = File.ReadAllText(Full(path)).Split("\n  - rule: ").ToList();
        parts.RemoveAll(p => p.StartsWith(rule + "\n", StringComparison.Ordinal)).ShouldBe(1);
        Write(path, string.Join("\n  - rule: ", parts));
        return this;
    }

    /// <summary>Writes a file.</summary>
    public EditedHome Write(string path, string text)
    {
        Save(Full(path), text);
        return this;
    }

    public void Dispose() => Directory.Delete(Folder, true);

    private static void Save(string full, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    private string Full(string path) => Path.Combine(Folder, "after", "rules", path);
}
