using System.Text.RegularExpressions;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.House;

/// <summary>The arrows between the folders of the library point one way.</summary>
public sealed partial class FolderTests
{
    // A folder may use those before it and none after it. Selector.cs at the top uses all.
    private static readonly string[] _order =
    [
        "Diagnostics", "Quantities", "Reading", "Body", "Posture", "Statics", "Words", "Knowledge", "Screening", "Rules", "Candidates", "Recommending", "Examples", "Analysis", "Explaining", "Comparing", "Schemas", "Editing", "Rendering",
    ];

    private static readonly string _library = Path.Combine(RepositoryFiles.Root, "src/HingeSelector");

    [Fact]
    public void Every_folder_has_a_place_in_the_order()
        => Directory.GetDirectories(_library).Select(Path.GetFileName).Where(f => f is not ("bin" or "obj")).Except(_order).ShouldBeEmpty();

    [Fact]
    public void No_folder_uses_one_that_comes_after_it()
    {
        var wrong = SourceFiles()
            .SelectMany(f => Usings().Matches(File.ReadAllText(f)).Select(m => (File: f, Used: m.Groups["folder"].Value)))
            .Where(u => Array.IndexOf(_order, FolderOf(u.File)) is >= 0 and var place && Array.IndexOf(_order, u.Used) > place)
            .Select(u => $"{Path.GetRelativePath(_library, u.File)} uses {u.Used}")
            .Distinct();
        wrong.ShouldBeEmpty();
    }

    [Fact]
    public void Only_the_yaml_reader_sees_the_yaml_library()
        => FilesThatUse("YamlDotNet").ShouldBe(["Reading/YamlReader.cs"]);

    [Fact]
    public void Only_firing_sees_the_rule_engine()
        => FilesThatUse("NRules").ShouldAllBe(f => f.StartsWith("Rules/Firing/", StringComparison.Ordinal));

    [Fact]
    public void The_model_knows_no_rules_and_the_library_no_console()
    {
        foreach (var file in SourceFiles())
            File.ReadAllText(file).ShouldNotContain("Console.", customMessage: file);
    }

    [Fact]
    public void No_file_is_longer_than_three_hundred_lines()
        => Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && File.ReadLines(f).Count() > 300)
            .Select(f => Path.GetRelativePath(RepositoryFiles.Root, f)).ShouldBeEmpty();

    private static IEnumerable<string> SourceFiles()
        => Directory.EnumerateFiles(_library, "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("/obj/", StringComparison.Ordinal));

    private static IReadOnlyList<string> FilesThatUse(string library)
        => [.. SourceFiles().Where(f => Regex.IsMatch(File.ReadAllText(f), $@"^using {library}\b|\b{library}\.", RegexOptions.Multiline))
            .Select(f => Path.GetRelativePath(_library, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    private static string FolderOf(string file)
    {
        var relative = Path.GetRelativePath(_library, file).Replace('\\', '/');
        var slash = relative.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? "" : relative[..slash];
    }

    [GeneratedRegex(@"(?:using (?:static )?HingeSelector\.|(?<![\w.])(?:HingeSelector\.)?)(?<folder>Diagnostics|Quantities|Reading|Body|Posture|Statics|Words|Knowledge|Screening|Rules|Candidates|Recommending|Examples|Analysis|Explaining|Comparing|Schemas|Editing|Rendering)(?:;|\.(?=[A-Z]))", RegexOptions.CultureInvariant)]
    private static partial Regex Usings();
}
