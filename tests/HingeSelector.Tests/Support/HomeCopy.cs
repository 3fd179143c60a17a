namespace HingeSelector.Tests.Support;

/// <summary>A copy of rules and content in a folder of its own, for tests that change them; it goes when the test ends.</summary>
internal sealed class HomeCopy : IDisposable
{
    public HomeCopy()
    {
        foreach (var part in new[] { "rules", "content" })
            Copy(Path.Combine(RepositoryFiles.Root, part), Path.Combine(Folder, part));
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("hinge-").FullName;

    public string PathOf(string file) => Path.Combine(Folder, file);

    public string Read(string file) => File.ReadAllText(PathOf(file));

    public void Write(string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(file))!);
        File.WriteAllText(PathOf(file), text);
    }

    /// <summary>Every file with its text.</summary>
    public IReadOnlyDictionary<string, string> Texts()
        => Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(Folder, f).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, true);

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
