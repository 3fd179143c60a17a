using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Analysis;

/// <summary>HS3114 to HS3117: advice that nobody can carry out.</summary>
/// <remarks>
/// Decided on the closed part of the language and not on prose: a request names a number or a word of its list, and the variants must
/// permit it; a stop of today says what may still be done; a cue says what it asks; what is withheld is something that a cue asks.
/// </remarks>
internal static class AdviceCheck
{
    private const string Permits = "permits";

    /// <summary>Looks at every rule that can fire.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        var asked = book.Book.Rules.SelectMany(r => r.Conclusions.OfType<CueConclusion>()).SelectMany(c => c.Asks).ToHashSet(StringComparer.Ordinal);
        foreach (var rule in book.Living)
        {
            foreach (var request in CheckedBook.RequestsOf(rule).Where(r => IsPermittedByNone(book.Book, rule, r.Key)))
                bag.Add(Problems.NotPermitted(rule.Span, rule.Id, Effects.Text(request), request.Key));
            if (rule.Conclusions.Any(c => c is StopConclusion { Level: StopLevel.Today, Allowed: 0 }))
                bag.Add(Problems.StopWithoutOption(rule.Span, rule.Id));
            if (rule.Conclusions.Any(c => c is CueConclusion { Asks.Count: 0 }))
                bag.Add(Problems.CueAsksNothing(rule.Span, rule.Id));
            foreach (var ask in rule.Conclusions.OfType<WithholdConclusion>().SelectMany(w => w.Asks).Where(a => !asked.Contains(a)))
                bag.Add(Problems.WithholdsNothing(rule.Span, rule.Id, ask));
        }
    }

    // What is no value of "permits", such as repetitions, every variant permits.
    private static bool IsPermittedByNone(RuleBook book, Rule rule, string key)
    {
        if (book.Vocabulary.Find(Permits) is not { } word || !word.Values.Contains(key))
            return false;
        var bit = 1UL << word.Values.ToList().IndexOf(key);
        return book.Variants.Where(v => (rule.Variants & (1UL << v.Index)) != 0).All(v => (v.Words.First(w => w.Slot == word.Slot).Value.Bits & bit) == 0);
    }
}
