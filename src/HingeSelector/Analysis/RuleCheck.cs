using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>All that can be known of a rule book without an athlete.</summary>
internal static class RuleCheck
{
    private static readonly Action<CheckedBook, DiagnosticBag>[] _checks =
    [
        NeverFiresCheck.Run,
        IdleLineCheck.Run,
        AddsNothingCheck.Run,
        ContradictionCheck.Run,
        GapCheck.Run,
        MatrixCheck.Run,
        EvidenceCheck.Run,
        ReadCheck.Run,
        AdviceCheck.Run,
        CautionCheck.Run,
    ];

    /// <summary>Runs every check on a book that was read without errors; what the authors accept is left out.</summary>
    public static void Run(RuleBook book, RuleFiles files, DiagnosticBag bag)
    {
        var own = new DiagnosticBag();
        var ready = new CheckedBook(book, files);
        foreach (var check in _checks)
            check(ready, own);
        foreach (var diagnostic in Acceptances.Apply(book, own.Sorted))
            bag.Add(diagnostic);
    }
}
