namespace HingeSelector.Knowledge;

/// <summary>A published ratio between the 1RM of two variants.</summary>
/// <param name="To">The other variant.</param>
/// <param name="Low">Lowest published ratio, this variant over the other.</param>
/// <param name="High">Highest published ratio.</param>
/// <param name="Sources">Ids of sources.</param>
public sealed record StrengthRelation(string To, double Low, double High, IReadOnlyList<string> Sources);
