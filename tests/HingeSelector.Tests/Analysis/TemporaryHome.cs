using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Analysis;

/// <summary>A copy of the rules folder that a test may write in.</summary>
internal sealed class TemporaryHome : IDisposable
{
    public TemporaryHome()
    {
        foreach (var (path, text) in RepositoryFiles.Rules.Texts)
            Write(path, text);
        // The check looks for the pages on how to measure, not into them.
        var pages = Directory.CreateDirectory(System.IO.Path.Combine(Path, "content", "protocols")).FullName;
        foreach (var page in Directory.EnumerateFiles(System.IO.Path.Combine(RepositoryFiles.Root, "content", "protocols")))
            File.WriteAllText(System.IO.Path.Combine(pages, System.IO.Path.GetFileName(page)), "");
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("hinge-").FullName;

    public void Write(string path, string text)
    {
        var full = System.IO.Path.Combine(Path, "rules", path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    public string Read(string path) => File.ReadAllText(System.IO.Path.Combine(Path, "rules", path));

    public void Dispose() => Directory.Delete(Path, true);
}
