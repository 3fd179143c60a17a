namespace HingeSelector.Diagnostics;

/// <summary>Thrown when files cannot be used; carries every fault. Nothing is loaded in part.</summary>
public sealed class FaultyFilesException(IReadOnlyList<Diagnostic> diagnostics)
    : Exception($"{diagnostics.Count} faults in the files; the first: {diagnostics[0].Span} {diagnostics[0].Message}")
{
    /// <summary>The faults, sorted.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; } = diagnostics;
}
