using System.Text.RegularExpressions;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Pages;

/// <summary>The page on the model shows the numbers that are in force. With HINGE_UPDATE_GOLDEN=1 its table is rewritten.</summary>
public sealed partial class ModelPageTests
{
    private static readonly string _path = Path.Combine(RepositoryFiles.Root, "content/model.md");

    [Fact]
    public void The_table_holds_every_number_of_the_model_as_written_there()
    {
        var table = string.Concat(Parameter().Matches(RepositoryFiles.Rules.Texts["model.yaml"])
            .Select(m => $"| {m.Groups["label"].Value} | {m.Groups["default"].Value} | {m.Groups["range"].Value} | {m.Groups["grade"].Value} |\n"));
        var page = File.ReadAllText(_path);
        var start = page.IndexOf("|---|---|---|---|\n", StringComparison.Ordinal) + "|---|---|---|---|\n".Length;
        if (Golden.Updates)
            File.WriteAllText(_path, page[..start] + table);
        File.ReadAllText(_path)[start..].ShouldBe(table);
        table.Split('\n').Length.ShouldBe(RepositoryFiles.Book.Model.Notes.Count + 1);
    }

    [Fact]
    public void Every_source_of_a_page_is_in_the_bibliography()
    {
        // Pages on faults show faulty lines.
        foreach (var page in Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "content"), "*.md", SearchOption.AllDirectories).Where(f => !f.Contains("/diagnostics/", StringComparison.Ordinal)))
        {
            foreach (Match cited in Cited().Matches(File.ReadAllText(page)))
                RepositoryFiles.Book.Sources.Keys.ShouldContain(cited.Groups["id"].Value, page);
        }
    }

    [GeneratedRegex(@"  - parameter: .*\n    label: (?<label>.*)\n    default: (?<default>.*)\n    range: (?<range>.*)\n    grade: (?<grade>.*)\n", RegexOptions.CultureInvariant)]
    private static partial Regex Parameter();

    // An id in brackets that carries a year, and is no link.
    [GeneratedRegex(@"\[(?<id>[a-z][a-z0-9-]*-\d{4}(-[a-z]+)*)\](?!\()", RegexOptions.CultureInvariant)]
    private static partial Regex Cited();
}
