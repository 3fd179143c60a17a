namespace HingeSelector.Editing;

/// <summary>Writes files whole or not at all.</summary>
public static class WholeFiles
{
    // Not .yaml, so that nobody takes a file underway for a rule file.
    private const string Underway = ".underway";

    /// <summary>Creates one file.</summary>
    /// <exception cref="IOException">It exists already, or it cannot be written; then nothing is there.</exception>
    public static void Create(string path, string text)
    {
        var temporary = path + Underway;
        try
        {
            File.WriteAllText(temporary, text);
            File.Move(temporary, path, overwrite: false);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>Replaces files, all of them or none.</summary>
    /// <param name="folder">The folder that holds them.</param>
    /// <param name="before">Texts as they were, by path inside the folder: what a failure halfway is undone with.</param>
    /// <param name="after">New texts of those that change.</param>
    /// <exception cref="IOException">One cannot be written; those already replaced are as before.</exception>
    public static void Replace(string folder, IReadOnlyDictionary<string, string> before, IReadOnlyDictionary<string, string> after)
    {
        var replaced = new List<string>();
        try
        {
            foreach (var (path, text) in after)
                File.WriteAllText(Path.Combine(folder, path) + Underway, text);
            foreach (var path in after.Keys)
            {
                File.Move(Path.Combine(folder, path) + Underway, Path.Combine(folder, path), overwrite: true);
                replaced.Add(path);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            foreach (var path in replaced)
                File.WriteAllText(Path.Combine(folder, path), before[path]);
            throw;
        }
        finally
        {
            foreach (var path in after.Keys)
                File.Delete(Path.Combine(folder, path) + Underway);
        }
    }
}
