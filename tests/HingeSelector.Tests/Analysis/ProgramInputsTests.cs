using HingeSelector.Analysis;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Analysis;

/// <summary>What is listed as used by the program is used by the program.</summary>
public sealed class ProgramInputsTests
{
    private static readonly string _library = Path.Combine(RepositoryFiles.Root, "src", "HingeSelector");

    [Fact]
    public void Every_listed_word_stands_in_the_code_and_in_the_vocabulary()
    {
        var code = string.Concat(Directory.EnumerateFiles(_library, "*.cs", SearchOption.AllDirectories).Where(f => !f.EndsWith("ProgramInputs.cs", StringComparison.Ordinal)).Select(File.ReadAllText));
        foreach (var id in ProgramInputs.Ids)
        {
            RepositoryFiles.Book.Vocabulary.Find(id).ShouldNotBeNull(id);
            // Baselines are read by the name of their measure and "-baseline".
            code.ShouldContain($"\"{id.Replace("-baseline", "", StringComparison.Ordinal)}\"", customMessage: id);
        }
    }
}
