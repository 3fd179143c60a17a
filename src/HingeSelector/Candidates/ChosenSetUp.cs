namespace HingeSelector.Candidates;

/// <summary>A candidate with its chosen set-up, and whether the standing one was kept.</summary>
/// <param name="Candidate">The candidate.</param>
/// <param name="Wishes">What rules asked.</param>
/// <param name="KeptStanding">What the search alone would have chosen, m, when the standing height was kept instead; null otherwise.</param>
public sealed record ChosenSetUp(Candidate Candidate, SetUpWishes Wishes, double? KeptStanding);
