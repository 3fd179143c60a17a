namespace HingeSelector.Rules.Firing;

/// <summary>One conclusion of the network.</summary>
/// <param name="Rule">Index of the rule.</param>
/// <param name="Candidate">Place of the variant, or <see cref="Evaluating.Firing.OfAthlete"/>.</param>
/// <param name="Sequence">Place in the order of firing, from 0.</param>
public readonly record struct TraceStep(int Rule, int Candidate, int Sequence);
