using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>A question that the network asks of a subject: certain conditions hold, for certain variants only.</summary>
/// <remarks>Two tests that ask the same are equal, so that the network shares the node.</remarks>
internal sealed class SubjectTest : IEquatable<SubjectTest>
{
    private readonly ulong _variants;
    private readonly Condition[] _conditions;

    /// <summary>A question about the athlete.</summary>
    public SubjectTest(Condition condition)
        : this(ulong.MaxValue, [condition])
    {
    }

    /// <summary>A question about a candidate.</summary>
    /// <param name="variants">Variants that may meet it, one bit each; looked at first.</param>
    /// <param name="conditions">What must hold.</param>
    public SubjectTest(ulong variants, IReadOnlyList<Condition> conditions)
    {
        _variants = variants;
        _conditions = [.. conditions];
        Key = $"{variants:x}: {string.Join(" & ", conditions.Select(c => c.Key))}";
    }

    private SubjectTest(string key)
    {
        _variants = ulong.MaxValue;
        _conditions = [];
        Key = key;
    }

    /// <summary>A test that always holds and stands before others.</summary>
    /// <remarks>
    /// The engine compares each new condition with all its siblings while it builds the network, so the time grows with their square.
    /// Spread over shelves, each has a fraction of the siblings.
    /// </remarks>
    public static SubjectTest Shelf(string key)
    {
        var sum = 0;
        foreach (var letter in key)
            sum = ((sum * 31) + letter) % Shelves;
        return new SubjectTest($"shelf {sum}");
    }

    private const int Shelves = 17;

    /// <summary>Canonical form.</summary>
    public string Key { get; }

    /// <summary>Whether it holds for certain.</summary>
    public bool Holds(Subject subject)
    {
        if ((_variants >> Math.Max(subject.Candidate, 0) & 1) == 0)
            return false;
        foreach (var condition in _conditions)
        {
            if (condition.Evaluate(subject.View) != Truth.True)
                return false;
        }
        return true;
    }

    /// <inheritdoc/>
    public bool Equals(SubjectTest? other) => other is not null && other.Key == Key;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SubjectTest);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Key;
}
