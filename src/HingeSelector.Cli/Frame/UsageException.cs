namespace HingeSelector.Cli.Frame;

/// <summary>The command line asks for something that cannot be: exit code 2, nothing on standard output.</summary>
/// <param name="message">What is wrong and what was expected, in one sentence.</param>
/// <param name="hint">How to mend it; null when the message says it.</param>
public sealed class UsageException(string message, string? hint = null) : Exception(message)
{
    /// <summary>How to mend it.</summary>
    public string? Hint { get; } = hint;
}
