using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>A compiled condition: three-valued, free of any file or engine.</summary>
/// <remarks>Two conditions that ask the same are equal, wherever they stand, so that engines can share the work.</remarks>
public abstract class Condition(string key, string text, SourceSpan span) : IEquatable<Condition>
{
    /// <summary>Canonical form; equal for equal questions.</summary>
    public string Key { get; } = key;

    /// <summary>As the author wrote it.</summary>
    public string Text { get; } = text;

    /// <summary>Where the author wrote it.</summary>
    public SourceSpan Span { get; } = span;

    /// <summary>Whether it holds.</summary>
    public abstract Truth Evaluate(in FactView view);

    /// <summary>Every reading that it looks at.</summary>
    public abstract IEnumerable<WordReading> Reads { get; }

    /// <summary>Every finding that it looks at, with whether presence is asked.</summary>
    public virtual IEnumerable<FindingRead> Findings => [];

    /// <inheritdoc/>
    public bool Equals(Condition? other) => other is not null && other.Key == Key;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Condition);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Text;
}
