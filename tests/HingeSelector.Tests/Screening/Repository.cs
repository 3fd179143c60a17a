using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

/// <summary>Files of the repository that these tests read.</summary>
internal static class Repository
{
    private static readonly Lazy<Vocabulary> _vocabulary = new(ReadVocabulary);

    public static DateOnly DemoDay { get; } = new(2026, 11, 24);

    public static string Root { get; } = FindRoot();

    public static Vocabulary Vocabulary => _vocabulary.Value;

    public static IReadOnlyList<string> VariantIds { get; } =
        [.. Directory.GetFiles(Path.Combine(Root, "rules", "variants"), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    public static SourceText Source(string path) => new(path, File.ReadAllText(Path.Combine(Root, path)));

    private static Vocabulary ReadVocabulary()
    {
        var bag = new DiagnosticBag();
        var vocabulary = VocabularyReader.Read(YamlReader.Read(Source("rules/vocabulary.yaml"), bag), VariantIds, bag);
        DiagnosticPrinter.Print(bag.Sorted).ShouldBeEmpty();
        return vocabulary!;
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "HingeSelector.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("No folder above the tests holds HingeSelector.sln.");
    }
}
