using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Analysis;

/// <summary>A copy of the rules folder that a test may write in.</summary>
internal sealed class TemporaryHome : IDisposable
{
    public TemporaryHome()
    {
        foreach (var (path, text) in RepositoryFiles.Rules.Texts)
            Write(path, text);
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
