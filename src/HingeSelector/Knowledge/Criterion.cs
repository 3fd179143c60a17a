namespace HingeSelector.Knowledge;

/// <summary>One of the questions by which candidates are compared.</summary>
/// <param name="Id">Name used in points lines.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Asks">The question.</param>
/// <param name="Weight">How much it counts where a philosophy does not say otherwise; zero or more.</param>
/// <param name="Index">Place in the list.</param>
public sealed record Criterion(string Id, string Label, string Asks, int Weight, int Index);
