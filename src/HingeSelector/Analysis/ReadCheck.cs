using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Analysis;

/// <summary>HS3112 and HS3113: facts and findings that nothing reads.</summary>
internal static class ReadCheck
{
    /// <summary>Looks at every measured word and every finding.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var conditions = book.Book.Rules.SelectMany(r => r.Conditions).ToList();
        var read = conditions.SelectMany(c => c.Reads).Select(r => r.Word.Id).Concat(ProgramInputs.Ids).ToHashSet(StringComparer.Ordinal);
        var floors = book.Book.Vocabulary.Words.Where(w => read.Contains(w.Id)).Select(w => w.NotBelow).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var word in book.Book.Vocabulary.Words.Where(w => w.IsMeasured && !read.Contains(w.Id) && !floors.Contains(w.Id) && !HoldsTheAthlete(w)))
            bag.Add(Problems.NeverRead(word.Span, word.Id));
        var asked = conditions.SelectMany(c => c.Findings).Select(f => f.Finding).ToHashSet();
        foreach (var finding in book.Book.Findings.Where(f => !asked.Contains(f.Index)))
            bag.Add(Problems.FindingNeverRead(finding.Span, finding.Id));
    }

    // A question that must be answered does something even when no rule reads the answer: a blank holds the athlete.
    private static bool HoldsTheAthlete(Word word) => word.Groups.Any(g => g is "stop-questions" or "must-answer" or "must-answer-under-18");
}
