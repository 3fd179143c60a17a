using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>One fact that is taken to be otherwise.</summary>
/// <param name="Word">The fact.</param>
/// <param name="Side">left, right or both; null for a word without sides.</param>
/// <param name="Value">The other value.</param>
/// <param name="Now">The value on file, for people.</param>
/// <param name="Then">The other value, for people.</param>
/// <param name="Span">Where it was asked.</param>
public sealed record WhatIfChange(Word Word, string? Side, FactValue Value, string Now, string Then, SourceSpan Span)
{
    /// <summary>The values on file, one a side that is changed.</summary>
    public IReadOnlyList<FactValue> Before { get; init; } = [];

    /// <summary>Name for people, with the side.</summary>
    public string Label => Side is null ? Word.Label : $"{Word.Label}, {Side}";
}
