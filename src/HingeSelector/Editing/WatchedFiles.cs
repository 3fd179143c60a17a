namespace HingeSelector.Editing;

/// <summary>Tells by their times and sizes which files were saved since the last look.</summary>
/// <param name="folder">A folder whose YAML files are watched.</param>
/// <param name="others">Further files, by full path.</param>
public sealed class WatchedFiles(string folder, IReadOnlyList<string> others)
{
    private Dictionary<string, Seen> _seen = Look(folder, others);

    /// <summary>Paths that were saved, added or removed since the last call: inside the folder with forward slashes, others as they were named.</summary>
    public IReadOnlyList<string> Changes()
    {
        var now = Look(folder, others);
        var changed = now.Keys.Union(_seen.Keys).Where(path => now.GetValueOrDefault(path) != _seen.GetValueOrDefault(path)).Order(StringComparer.Ordinal).ToList();
        _seen = now;
        return changed;
    }

    private static Dictionary<string, Seen> Look(string folder, IReadOnlyList<string> others)
    {
        var seen = new Dictionary<string, Seen>(StringComparer.Ordinal);
        if (Directory.Exists(folder))
        {
            foreach (var file in new DirectoryInfo(folder).EnumerateFiles("*.yaml", SearchOption.AllDirectories))
                Add(seen, Path.GetRelativePath(folder, file.FullName).Replace('\\', '/'), file);
        }
        foreach (var path in others)
            Add(seen, path, new FileInfo(path));
        return seen;
    }

    // An editor may take a file away for a moment while it saves: then it counts as removed until the next look.
    private static void Add(Dictionary<string, Seen> seen, string path, FileInfo file)
    {
        if (file.Exists)
            seen[path] = new Seen(file.LastWriteTimeUtc.Ticks, file.Length);
    }

    private sealed record Seen(long Ticks, long Length);
}
