using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Facts that no explanation proposes to be otherwise.</summary>
/// <param name="Why">Why.</param>
/// <param name="Words">The facts.</param>
public sealed record LeftOut(string Why, IReadOnlyList<Word> Words);
