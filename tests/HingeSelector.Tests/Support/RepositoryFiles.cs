using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Tests.Support;

/// <summary>The files of the repository, found from the folder of the test program upwards.</summary>
internal static class RepositoryFiles
{
    private static readonly Lazy<string> _root = new(FindRoot);
    private static readonly Lazy<RuleFiles> _rules = new(() => RuleFiles.FromFolder(Path.Combine(Root, "rules")));
    private static readonly Lazy<RuleBook> _book = new(() => RuleBookReader.Read(_rules.Value));

    /// <summary>The folder that holds the solution.</summary>
    public static string Root => _root.Value;

    /// <summary>The texts of the shipped rules.</summary>
    public static RuleFiles Rules => _rules.Value;

    /// <summary>The shipped rules, read once.</summary>
    public static RuleBook Book => _book.Value;

    /// <summary>A file as its author sees it.</summary>
    public static SourceText Source(string path) => new(path, File.ReadAllText(Path.Combine(Root, path)));

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "HingeSelector.sln")))
                return folder.FullName;
        }
        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
