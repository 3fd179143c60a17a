using System.ComponentModel;
using System.Diagnostics;
using System.Formats.Tar;
using HingeSelector.Cli.Frame;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary>Reads the rules as they stand in a revision of the repository, through git.</summary>
internal static class GitRules
{
    /// <summary>The files of a revision.</summary>
    /// <param name="revision">What git calls a revision: a commit, a branch, <c>HEAD~1</c>.</param>
    /// <param name="home">The folder that holds the rules in use.</param>
    /// <param name="folder">The name of the rules folder in it.</param>
    /// <exception cref="UsageException">Git is missing, or the revision, or the folder in it.</exception>
    public static RuleFiles Read(string revision, string home, string folder)
    {
        // A revision never starts with a hyphen; git would take it for an option.
        if (revision.StartsWith('-'))
            throw NotThere(revision, folder);
        using var process = Start(revision, home, folder);
        var said = process.StandardError.ReadToEndAsync();
        using var archive = new MemoryStream();
        process.StandardOutput.BaseStream.CopyTo(archive);
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw said.GetAwaiter().GetResult().Contains("not a git repository", StringComparison.OrdinalIgnoreCase)
                ? new UsageException($"'{revision}' is no folder, and the rules in use are in no git repository.", "Give a folder that holds rules/.")
                : NotThere(revision, folder);
        archive.Position = 0;
        return new RuleFiles(Unpack(archive, folder), $"{revision}:{folder}");
    }

    private static Process Start(string revision, string home, string folder)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("git", ["archive", "--format=tar", revision, "--", folder])
            {
                WorkingDirectory = home,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
        }
        catch (Win32Exception)
        {
            throw new UsageException($"'{revision}' is no folder, and git, which could look it up as a revision, is not installed.", "Give a folder that holds rules/, or install git.");
        }
    }

    private static Dictionary<string, string> Unpack(Stream archive, string folder)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        using var reader = new TarReader(archive);
        while (reader.GetNextEntry() is { } entry)
        {
            if (entry.DataStream is null || !entry.Name.EndsWith(".yaml", StringComparison.Ordinal) || !entry.Name.StartsWith(folder + "/", StringComparison.Ordinal))
                continue;
            using var text = new StreamReader(entry.DataStream);
            texts[entry.Name[(folder.Length + 1)..]] = text.ReadToEnd();
        }
        return texts;
    }

    private static UsageException NotThere(string revision, string folder)
        => new($"'{revision}' is neither a folder nor a git revision that holds '{folder}'.", "Give a folder that holds rules/, or a commit, branch or tag such as 'HEAD~1'.");
}
