namespace HingeSelector.Words;

/// <summary>A profession and the history for which its letters count.</summary>
/// <param name="Id">Name.</param>
/// <param name="MayClear">Values of the history, as rules name them; empty for those whose word is no clearance.</param>
public sealed record ClearanceProfession(string Id, IReadOnlyList<string> MayClear);
