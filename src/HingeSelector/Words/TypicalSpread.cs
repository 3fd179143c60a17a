namespace HingeSelector.Words;

/// <summary>What people show who have not been measured yet: mean and standard deviation by sex, in base units.</summary>
/// <param name="Female">Women.</param>
/// <param name="Male">Men.</param>
/// <param name="SidesApart">Standard deviation of the difference between the sides; 0 for a word without sides.</param>
/// <param name="Grade">How far to trust it, as the grade of a reason.</param>
/// <param name="Sources">Ids of sources; empty for common practice.</param>
/// <param name="Note">What to beware of; null for nothing.</param>
public sealed record TypicalSpread((double Mean, double Deviation) Female, (double Mean, double Deviation) Male, double SidesApart, string Grade, IReadOnlyList<string> Sources, string? Note);
