using HingeSelector.Diagnostics;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rules.Checking;

/// <summary>Proves on the rule graph that nothing sealed can go missing under a philosophy, however its rules came about.</summary>
/// <remarks>
/// With the same facts every sealed rule holds under the philosophy whenever it holds in the base, by induction along the order of findings:
/// sealed rules are the same rules; a finding that one wants present keeps every rule that concludes it; a finding that one wants absent gains
/// none; and where one reads the chosen set-up, the requests that decide it are the same requests.
/// </remarks>
public static class SealProof
{
    /// <summary>Reports every gap in the proof as HS3611.</summary>
    /// <param name="book">The base.</param>
    /// <param name="seals">The seal over the base.</param>
    /// <param name="overlay">The philosophy laid over it.</param>
    /// <param name="bag">Collects faults.</param>
    public static void Run(RuleBook book, SealedRules seals, Overlay overlay, DiagnosticBag bag)
    {
        var under = overlay.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
        void Report(string what, SourceSpan? at = null) => bag.Add(Problems.SealBroken(at ?? overlay.Philosophy.Span, overlay.Philosophy.Id, what));
        foreach (var rule in book.Rules.Where(r => seals.Why(r) is not null))
        {
            if (!under.TryGetValue(rule.Id, out var same))
                Report($"the sealed rule '{rule.Id}' is missing");
            else if (same with { Index = rule.Index } != rule)
                Report($"the sealed rule '{rule.Id}' is not as in the base", same.Change?.Span);
        }
        var ofBase = book.Rules.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var rule in overlay.Rules.Where(r => !ofBase.Contains(r.Id)))
        {
            foreach (var found in rule.Conclusions.OfType<FindingConclusion>().Where(f => seals.ClearedBy(f.Finding) is not null))
                Report($"'{rule.Id}' adds to the finding '{book.Findings[found.Finding].Id}', which the sealed rule '{seals.ClearedBy(found.Finding)!.Id}' wants absent", rule.Span);
            if (seals.SetUpReader is { } reader && SealedRules.PlacingKey(rule) is { } key)
                Report($"'{rule.Id}' requests {key}, which moves the set-up that the sealed rule '{reader.Id}' reads", rule.Span);
        }
        foreach (var finding in book.Findings.Where(f => seals.HeldUpBy(f.Index) is not null || seals.ClearedBy(f.Index) is not null))
        {
            foreach (var source in book.RulesOfFinding[finding.Index].Select(i => book.Rules[i].Id).Where(id => !under.ContainsKey(id)))
                Report($"the sealed finding '{finding.Id}' loses the rule '{source}'");
        }
        if (overlay.FindingOrder.Distinct().Count() != book.Findings.Count)
            Report("some findings are never decided");
        if (overlay.Philosophy.Weights.Any(w => w < 0))
            Report("a weight is below zero");
    }
}
