namespace HingeSelector.Screening;

/// <summary>What an answer answers.</summary>
/// <param name="Word">Id of the word.</param>
/// <param name="Side">0 for a word without sides and for the left side, 1 for the right side.</param>
public sealed record AnswerKey(string Word, int Side);
