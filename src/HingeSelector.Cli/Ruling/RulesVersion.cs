using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Cli.Ruling;

/// <summary>A version of the rules as the command line names it: a folder, or a state of the repository around the rules in use.</summary>
internal static class RulesVersion
{
    private const string Folder = "rules";
    private const string Mark = "vocabulary.yaml";

    /// <summary>The files of a version.</summary>
    /// <param name="typed">A folder that holds rules/, a rules folder, or what git calls a revision.</param>
    /// <param name="home">The folder that holds the rules in use.</param>
    /// <param name="around">The surroundings.</param>
    /// <exception cref="UsageException">There is no such version.</exception>
    public static RuleFiles Files(string typed, string home, Surroundings around)
    {
        var full = Path.GetFullPath(typed, around.WorkingFolder);
        if (File.Exists(Path.Combine(full, Folder, Mark)))
            return RuleFiles.FromFolder(Path.Combine(full, Folder)) with { Name = Name(Path.Combine(typed, Folder)) };
        if (File.Exists(Path.Combine(full, Mark)))
            return RuleFiles.FromFolder(full) with { Name = Name(typed) };
        if (Directory.Exists(full))
            throw new UsageException($"'{typed}' holds no {Folder}/{Mark}.", "Give the folder in which the folder 'rules' lies, the rules folder itself, or a git revision.");
        return GitRules.Read(typed, home, Folder);
    }

    /// <summary>The version with its trees, and its rules compiled.</summary>
    /// <exception cref="FaultyInputException">A file is faulty.</exception>
    public static (HingeSelector.Comparing.Version Version, RuleBook Book) Read(RuleFiles files)
    {
        var bag = new DiagnosticBag();
        var version = new HingeSelector.Comparing.Version(files, YamlTrees.Read(files.Sources(), bag));
        var book = bag.HasErrors ? null : RuleBookReader.Read(files, version.Trees, bag);
        return book is null || bag.HasErrors ? throw new FaultyInputException(ExitCode.BadRules, bag.Sorted) : (version, book);
    }

    // What the author typed, never the path of the machine.
    private static string Name(string path) => path.Replace('\\', '/').TrimEnd('/');
}
