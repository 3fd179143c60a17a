using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Numbers of the marks of one rule book.</summary>
/// <param name="findings">How many findings the book has.</param>
internal sealed class MarkCodes(int findings)
{
    /// <summary>The finding is present.</summary>
    public static int Present(int finding) => finding * 2;

    /// <summary>The finding is absent.</summary>
    public static int Absent(int finding) => (finding * 2) + 1;

    /// <summary>The rule cannot hold.</summary>
    public int Refuted(int rule) => (findings * 2) + rule;

    /// <summary>The finding that a mark is about; null for a mark about a rule.</summary>
    public FindingRead? FindingOf(int code) => code < findings * 2 ? new(code / 2, code % 2 == 0) : null;
}
