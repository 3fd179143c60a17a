using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>Takes out the warnings that the authors let stand with a reason, and tells acceptances that accept nothing.</summary>
/// <remarks>Only warnings can be accepted; an error stays one.</remarks>
internal static class Acceptances
{
    /// <summary>What is left of some diagnostics.</summary>
    public static IReadOnlyList<Diagnostic> Apply(RuleBook book, IReadOnlyList<Diagnostic> found)
    {
        var accepted = book.Rules.SelectMany(r => r.Accepts).Concat(book.Accepted).ToList();
        var left = found.Where(d => d.Severity == Severity.Error || !accepted.Exists(a => Covers(a, d))).ToList();
        // Where a search was given up, what it would have found is not known.
        foreach (var acceptance in accepted.Where(_ => !found.Any(d => d.Id == "HS3124")))
        {
            foreach (var of in acceptance.Of.Count > 0 ? acceptance.Of : [Everything])
            {
                if (!found.Any(d => Covers(acceptance with { Of = of == Everything ? [] : [of] }, d)))
                    left.Add(Problems.UnusedAcceptance(acceptance.Span, acceptance.Code, of));
            }
        }
        return left;
    }

    private const string Everything = "the whole folder";

    private static bool Covers(Acceptance acceptance, Diagnostic diagnostic)
        => diagnostic.Severity == Severity.Warning && acceptance.Code == diagnostic.Id
            && (diagnostic.Subject is null ? acceptance.Of.Count == 0 : acceptance.Of.Contains(diagnostic.Subject, StringComparer.Ordinal));
}
