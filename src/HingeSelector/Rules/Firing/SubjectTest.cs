using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>A question that the network asks of a subject: certain conditions hold, for certain variants only.</summary>
/// <remarks>Two tests that ask the same are equal, so that the network shares the node.</remarks>
internal sealed class SubjectTest : IEquatable<SubjectTest>
{
    private const int Drawers = 20;

    private readonly ulong _variants;
    private readonly Condition[] _conditions;

    /// <summary>A question about the athlete.</summary>
    public SubjectTest(IReadOnlyList<Condition> conditions)
        : this(ulong.MaxValue, conditions)
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

    /// <summary>A question that always holds, put before others to sort them.</summary>
    /// <remarks>
    /// When the network is built, every new question is compared with all that hang at the same place. Hung into a few dozen drawers
    /// instead of one, a network of five hundred rules is built several times faster; a decision pays one call per drawer.
    /// </remarks>
    /// <param name="first">The first real question.</param>
    public static SubjectTest Drawer(Condition first)
    {
        var sum = 0;
        foreach (var letter in first.Key)
            sum = unchecked((sum * 31) + letter);
        return new SubjectTest($"drawer {(uint)sum % Drawers}");
    }

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
