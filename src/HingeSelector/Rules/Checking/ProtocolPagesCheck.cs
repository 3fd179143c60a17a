using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Checking;

/// <summary>Every measured word needs a page that says how it is measured.</summary>
public static class ProtocolPagesCheck
{
    /// <summary>Holds the vocabulary against the pages that exist.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="pages">Names of the pages without their ending.</param>
    /// <param name="bag">Collects a warning for each page that is missing; words that share a page share the warning.</param>
    public static void Run(Vocabulary vocabulary, IReadOnlyCollection<string> pages, DiagnosticBag bag)
    {
        foreach (var page in vocabulary.Words.Where(w => w.IsMeasured).GroupBy(w => w.Protocol))
        {
            var words = page.DistinctBy(w => w.Span).ToList();
            if (page.Key is null)
                words.ForEach(w => bag.Add(Problems.NoProtocolPage(w.Span, w.Id)));
            else if (!pages.Contains(page.Key))
                bag.Add(Problems.MissingProtocolPage(words[0].Span, page.Key, [.. page.Select(w => w.Id)], pages));
        }
    }
}
