using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Examples;

/// <summary>Runs the examples of rules that a philosophy changes or adds, under that philosophy.</summary>
public static class OverlayExamples
{
    /// <summary>Runs them for every philosophy of a book.</summary>
    /// <param name="book">The base.</param>
    /// <param name="bag">Collects faults in the given facts and examples that come out otherwise than expected.</param>
    public static IReadOnlyList<ExampleResult> RunAll(RuleBook book, DiagnosticBag bag)
        => [.. book.Overlays.Values.OrderBy(o => o.Philosophy.Id, StringComparer.Ordinal).SelectMany(o => new ExampleRunner(Changed(book.Under(o.Philosophy))).RunAll(bag))];

    // The examples of all other rules have run on the base.
    private static RuleBook Changed(RuleBook under) => under with { Rules = [.. under.Rules.Select(r => r.Change is null ? r with { Tries = [] } : r)] };
}
