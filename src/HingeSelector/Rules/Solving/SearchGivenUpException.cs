namespace HingeSelector.Rules.Solving;

/// <summary>A question took too many steps: it is neither answered nor denied.</summary>
internal sealed class SearchGivenUpException() : Exception("The search took too many steps.");
