using HingeSelector.Diagnostics;

namespace HingeSelector.Rules;

/// <summary>The texts of a rules folder, by path inside it.</summary>
/// <param name="Texts">Path with forward slashes, for example <c>variants/sumo.yaml</c>, and text.</param>
/// <param name="Name">What messages put before the path, for example <c>rules</c>.</param>
public sealed record RuleFiles(IReadOnlyDictionary<string, string> Texts, string Name = "rules")
{
    /// <summary>Reads every YAML file of a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="FaultyFilesException">The folder is missing or a file cannot be read.</exception>
    public static RuleFiles FromFolder(string folder)
    {
        if (!Directory.Exists(folder))
            throw new FaultyFilesException([Problems.MissingFile(folder, "it should hold the rules")]);
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories))
        {
            try
            {
                texts[Path.GetRelativePath(folder, path).Replace('\\', '/')] = File.ReadAllText(path);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new FaultyFilesException([Problems.CannotOpen(Path.GetRelativePath(folder, path), e.Message)]);
            }
        }
        return new RuleFiles(texts, Path.GetFileName(Path.TrimEndingDirectorySeparator(folder)));
    }

    /// <summary>The same files with one text replaced or added.</summary>
    public RuleFiles With(string path, string text)
        => this with { Texts = new Dictionary<string, string>(Texts, StringComparer.Ordinal) { [path] = text } };

    /// <summary>Every file as its author sees it.</summary>
    public IReadOnlyDictionary<string, SourceText> Sources() => Texts.ToDictionary(t => t.Key, t => new SourceText($"{Name}/{t.Key}", t.Value), StringComparer.Ordinal);

    /// <summary>A file as its author sees it, or null.</summary>
    public SourceText? Source(string path) => Texts.TryGetValue(path, out var text) ? new SourceText($"{Name}/{path}", text) : null;
}
