namespace HingeSelector.Recommending;

/// <summary>A question that must be answered first.</summary>
/// <param name="Word">Id of the word or of the group.</param>
/// <param name="Label">Its name for people.</param>
public sealed record UnansweredQuestion(string Word, string Label);
