using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Editing;

public partial class ProgramWordsTests
{
    [Fact]
    public void The_list_holds_every_word_of_the_vocabulary_that_the_code_names()
    {
        var declared = RepositoryFiles.Book.Vocabulary.Words.Where(w => w.Span != SourceSpan.None).Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
        var named = Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.EndsWith("ProgramWords.cs", StringComparison.Ordinal) && !f.Contains("/obj/", StringComparison.Ordinal))
            .SelectMany(f => Literal().Matches(File.ReadAllText(f)).Select(m => m.Groups["id"].Value))
            .Where(declared.Contains).Distinct();

        ProgramWords.Ids.Order(StringComparer.Ordinal).ShouldBe(named.Order(StringComparer.Ordinal));
    }

    [GeneratedRegex("\"(?<id>[a-z][a-z0-9-]*)\"", RegexOptions.CultureInvariant)]
    private static partial Regex Literal();
}
