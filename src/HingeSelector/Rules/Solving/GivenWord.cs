using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>One answer of a witness screen.</summary>
/// <param name="Reading">The word, with its side or its reading where it has one.</param>
/// <param name="Value">The answer.</param>
public sealed record GivenWord(WordReading Reading, FactValue Value);
