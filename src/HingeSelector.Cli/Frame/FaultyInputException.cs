using HingeSelector.Diagnostics;

namespace HingeSelector.Cli.Frame;

/// <summary>Files that cannot be used.</summary>
/// <param name="code">The exit code: data or rules.</param>
/// <param name="diagnostics">Every fault.</param>
public sealed class FaultyInputException(int code, IReadOnlyList<Diagnostic> diagnostics) : Exception("Files cannot be used.")
{
    /// <summary>The exit code.</summary>
    public int Code { get; } = code;

    /// <summary>Every fault.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; } = diagnostics;
}
