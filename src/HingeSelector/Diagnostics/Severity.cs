namespace HingeSelector.Diagnostics;

/// <summary>How much a diagnostic weighs.</summary>
public enum Severity
{
    /// <summary>Worth a look; nothing is refused.</summary>
    Warning,

    /// <summary>The file, row or option is refused.</summary>
    Error,
}
