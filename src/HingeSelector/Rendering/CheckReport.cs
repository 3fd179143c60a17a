using System.Text.Json;
using HingeSelector.Diagnostics;

namespace HingeSelector.Rendering;

/// <summary>What <c>rules check --format json</c> prints; the shape stands in rules/schema/check.schema.json.</summary>
/// <param name="SchemaVersion">Version of this shape.</param>
/// <param name="Rules">Rules read.</param>
/// <param name="Variants">Variants read.</param>
/// <param name="Examples">Examples run.</param>
/// <param name="Errors">Number of errors.</param>
/// <param name="Warnings">Number of warnings.</param>
/// <param name="Fixed">Edits that were made.</param>
/// <param name="Diagnostics">What was found, in file order.</param>
public sealed record CheckReport(int SchemaVersion, int Rules, int Variants, int Examples, int Errors, int Warnings, IReadOnlyList<CheckReportEdit> Fixed, IReadOnlyList<CheckReportItem> Diagnostics)
{
    /// <summary>Puts a report together.</summary>
    public static CheckReport Of(int rules, int variants, int examples, IReadOnlyList<SuggestedEdit> done, IReadOnlyList<Diagnostic> found)
        => new(1, rules, variants, examples, found.Count(d => d.Severity == Severity.Error), found.Count(d => d.Severity == Severity.Warning), [.. done.Select(CheckReportEdit.Of)], [.. found.Select(CheckReportItem.Of)]);

    /// <summary>The report as JSON text.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, CheckReportJson.Default.CheckReport);
}
