namespace HingeSelector.Rendering;

/// <summary>The facts that are missing for one reason.</summary>
/// <param name="State">Why they are missing.</param>
/// <param name="Words">The facts, those that most rules wait for first.</param>
public sealed record MissingFacts(string State, IReadOnlyList<MissingFact> Words);
