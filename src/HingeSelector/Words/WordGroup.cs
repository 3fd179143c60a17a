namespace HingeSelector.Words;

/// <summary>A group of words; some groups can be answered with one blanket line.</summary>
/// <param name="Id">Name.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Blanket">The blanket answer as typed; null when there is none.</param>
/// <param name="Means">The answer that the blanket gives to each word.</param>
/// <param name="NotSuggested">Why no explanation suggests another answer to its words; null when one may.</param>
public sealed record WordGroup(string Id, string Label, string? Blanket, string? Means, string? NotSuggested);
