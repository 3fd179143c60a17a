using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Rules;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Analysis;

/// <summary>START HERE: everything that is wrong with a rules folder: in reading it, in its examples, and in what the rules say together.</summary>
/// <param name="Book">The rules; null when they cannot be used.</param>
/// <param name="Examples">Examples that were run.</param>
/// <param name="Found">What was found, in file order.</param>
public sealed record FolderCheck(RuleBook? Book, int Examples, IReadOnlyList<Diagnostic> Found)
{
    /// <summary>Checks a folder.</summary>
    /// <param name="files">Its texts.</param>
    /// <param name="protocolPages">Names of the pages on how to measure; null when they are not looked at.</param>
    public static FolderCheck Run(RuleFiles files, IReadOnlyCollection<string>? protocolPages = null)
    {
        var bag = new DiagnosticBag();
        var book = RuleBookReader.Read(files, bag);
        if (book is not null && protocolPages is not null)
            ProtocolPagesCheck.Run(book.Vocabulary, protocolPages, bag);
        // Examples of rules with faults, and questions about them, would only repeat the faults.
        var examples = 0;
        if (book is not null && !bag.HasErrors)
        {
            examples = new ExampleRunner(book).RunAll(bag).Count + OverlayExamples.RunAll(book, bag).Count;
            RuleCheck.Run(book, files, bag);
        }
        return new FolderCheck(book, examples, bag.Sorted);
    }
}
