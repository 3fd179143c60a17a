namespace HingeSelector.Rules.Firing;

/// <summary>Something proven, as a fact that rules match: a finding is present, a finding is absent, a rule cannot hold.</summary>
/// <remarks>Every supporter inserts its own mark; rules ask whether one exists, so a second supporter changes nothing.</remarks>
/// <param name="code">Which; see <see cref="MarkCodes"/>.</param>
internal sealed class Mark(int code)
{
    /// <summary>Which; see <see cref="MarkCodes"/>.</summary>
    public int Code { get; } = code;
}
