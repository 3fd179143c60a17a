namespace HingeSelector.Screening;

/// <summary>What a roster holds: the rows that could be read, and those that could not.</summary>
/// <param name="Good">Athletes of the good rows, in file order.</param>
/// <param name="BadRows">Rows with faults, in file order; nothing of them is used.</param>
/// <param name="HeaderRead">Whether the header was understood; otherwise no row was looked at.</param>
public sealed record RosterResult(IReadOnlyList<AthleteRecord> Good, IReadOnlyList<BadRow> BadRows, bool HeaderRead);
