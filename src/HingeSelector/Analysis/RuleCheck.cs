using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>All that can be known of a rule book without an athlete.</summary>
internal static class RuleCheck
{
    private static readonly (string About, Action<CheckedBook, DiagnosticBag> Run)[] _checks =
    [
        ("rules that can never fire", NeverFiresCheck.Run),
        ("lines that leave nobody out", IdleLineCheck.Run),
        ("rules that add nothing", AddsNothingCheck.Run),
        ("rules that contradict each other", ContradictionCheck.Run),
        ("screens that leave nothing", GapCheck.Run),
        ("holes in the matrix", MatrixCheck.Run),
        ("grades and sources", EvidenceCheck.Run),
        ("facts that nothing reads", ReadCheck.Run),
        ("advice that nobody can carry out", AdviceCheck.Run),
        ("missing cautions", CautionCheck.Run),
    ];

    /// <summary>Runs every check on a book that was read without errors; what the authors accept is left out.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="files">The texts that they were read from.</param>
    /// <param name="bag">Collects what is found.</param>
    /// <param name="mostSteps">Steps after which a question is given up.</param>
    public static void Run(RuleBook book, RuleFiles files, DiagnosticBag bag, int mostSteps = Solver.UsualSteps)
    {
        var own = new DiagnosticBag();
        var at = book.Variants[0].Span;
        try
        {
            var ready = new CheckedBook(book, files, mostSteps);
            foreach (var (about, run) in _checks)
                RunOne(about, run, ready, at, own);
        }
        catch (SearchGivenUpException)
        {
            own.Add(Problems.NotDecided(at, "the rules"));
        }
        foreach (var diagnostic in Acceptances.Apply(book, own.Sorted))
            bag.Add(diagnostic);
    }

    // What a check found before it gave up stands: each finding is decided by itself.
    private static void RunOne(string about, Action<CheckedBook, DiagnosticBag> run, CheckedBook ready, SourceSpan at, DiagnosticBag bag)
    {
        try
        {
            run(ready, bag);
        }
        catch (SearchGivenUpException)
        {
            bag.Add(Problems.NotDecided(at, about));
        }
    }
}
