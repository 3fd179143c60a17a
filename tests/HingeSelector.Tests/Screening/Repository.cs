using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Tests.Support;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

/// <summary>The shipped words, read without the rules: a fault in a rule says nothing about reading screens.</summary>
internal static class Repository
{
    private static readonly Lazy<Vocabulary> _vocabulary = new(ReadVocabulary);

    public static DateOnly DemoDay { get; } = new(2026, 11, 24);

    public static Vocabulary Vocabulary => _vocabulary.Value;

    public static IReadOnlyList<string> VariantIds { get; } =
        [.. Directory.GetFiles(Path.Combine(RepositoryFiles.Root, "rules", "variants"), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    public static SourceText Source(string path) => RepositoryFiles.Source(path);

    private static Vocabulary ReadVocabulary()
    {
        var bag = new DiagnosticBag();
        var vocabulary = VocabularyReader.Read(YamlReader.Read(Source("rules/vocabulary.yaml"), bag), VariantIds, bag);
        DiagnosticPrinter.Print(bag.Sorted).ShouldBeEmpty();
        return vocabulary!;
    }
}
