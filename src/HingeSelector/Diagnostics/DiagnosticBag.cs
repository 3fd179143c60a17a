namespace HingeSelector.Diagnostics;

/// <summary>Collects every fault of a run, so that all are shown at once.</summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> _items = [];

    /// <summary>All faults in file, line and column order.</summary>
    public IReadOnlyList<Diagnostic> Sorted =>
        [.. _items.Distinct()
            .OrderBy(d => d.Span.Source?.Path, StringComparer.Ordinal)
            .ThenBy(d => d.Span.Line)
            .ThenBy(d => d.Span.Column)
            .ThenBy(d => d.Id, StringComparer.Ordinal)
            .ThenBy(d => d.Message, StringComparer.Ordinal)];

    /// <summary>Whether any of them is an error.</summary>
    public bool HasErrors => _items.Exists(d => d.Severity == Severity.Error);

    /// <summary>How many errors so far; lets a reader tell whether its own piece was clean.</summary>
    public int ErrorCount => _items.Count(d => d.Severity == Severity.Error);

    /// <summary>Adds a fault.</summary>
    public void Add(Diagnostic diagnostic) => _items.Add(diagnostic);
}
